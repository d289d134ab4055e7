// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.form;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

import punchwright.model.shop.Named;
import punchwright.ui.text.Texts;

/** Where an object is used: who in the loaded workspace points to it or to something in it. */
public final class Uses {

    private Uses() {
    }

    /** Names of the users of an object, its own parts left out. */
    public static List<String> of(EObject object) {
        Set<String> users = new LinkedHashSet<>();
        if (object.eResource() == null) {
            return List.of();
        }
        Set<EObject> inside = new LinkedHashSet<>();
        inside.add(object);
        object.eAllContents().forEachRemaining(inside::add);
        EcoreUtil.UsageCrossReferencer.findAll(inside, object.eResource().getResourceSet())
                .forEach((used, settings) -> collect(settings, inside, users));
        return List.copyOf(users);
    }

    private static void collect(Collection<EStructuralFeature.Setting> settings, Set<EObject> inside, Set<String> users) {
        for (EStructuralFeature.Setting setting : settings) {
            if (!inside.contains(setting.getEObject())) {
                users.add(name(setting.getEObject()));
            }
        }
    }

    private static String name(EObject user) {
        EObject at = user;
        while (at.eContainer() != null && !(at instanceof Named)) {
            at = at.eContainer();
        }
        String name = at instanceof Named named && named.getName() != null ? named.getName() : "";
        return Texts.of(at.eClass()) + " " + name;
    }
}
