// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.form;

import java.util.HashSet;
import java.util.Iterator;
import java.util.Locale;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

import punchwright.model.shop.Identified;

/** Identifiers for new objects: kind and running number, unique in the file. */
public final class NewIds {

    private NewIds() {
    }

    /** Gives an object an identifier that nothing in the file of {@code context} carries. */
    public static void give(EObject made, EObject context) {
        if (!(made instanceof Identified identified)) {
            return;
        }
        Set<String> taken = new HashSet<>();
        EObject root = EcoreUtil.getRootContainer(context);
        Iterator<EObject> all = root.eAllContents();
        while (all.hasNext()) {
            if (all.next() instanceof Identified other) {
                taken.add(other.getId());
            }
        }
        String kind = made.eClass().getName().toLowerCase(Locale.ROOT);
        int number = 1;
        while (taken.contains(kind + "-" + number)) {
            number++;
        }
        identified.setId(kind + "-" + number);
    }
}
