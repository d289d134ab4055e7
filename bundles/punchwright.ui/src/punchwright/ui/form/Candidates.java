// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.form;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;

import punchwright.model.shop.Machine;
import punchwright.model.shop.Named;
import punchwright.model.shop.ShopPackage;
import punchwright.ui.session.Session;
import punchwright.ui.table.Natural;

/**
 * What a reference may point to: objects of its type in the library and among the items; places only of the machine that is
 * edited.
 */
public final class Candidates {

    private Candidates() {
    }

    /** Candidates by name. */
    public static List<? extends EObject> of(EReference reference, EObject context) {
        if (reference.getEReferenceType() == ShopPackage.Literals.PLACE) {
            Machine machine = machineOf(context);
            return machine == null ? List.of() : List.copyOf(machine.getPlaces());
        }
        List<EObject> found = new ArrayList<>();
        Session.current().ifPresent(session -> {
            Iterator<EObject> kept = session.workspace().library().eAllContents();
            collect(kept, reference, found);
            collect(session.workspace().items().iterator(), reference, found);
        });
        found.sort(Comparator.comparing(Candidates::name, Natural::compare));
        return found;
    }

    private static void collect(Iterator<? extends EObject> all, EReference reference, List<EObject> found) {
        while (all.hasNext()) {
            EObject object = all.next();
            if (reference.getEReferenceType().isInstance(object)) {
                found.add(object);
            }
        }
    }

    private static Machine machineOf(EObject object) {
        for (EObject at = object; at != null; at = at.eContainer()) {
            if (at instanceof Machine machine) {
                return machine;
            }
        }
        return null;
    }

    private static String name(EObject object) {
        return object instanceof Named named && named.getName() != null ? named.getName() : "";
    }
}
