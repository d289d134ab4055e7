// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.form;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;

import punchwright.model.shop.Named;
import punchwright.ui.text.Texts;

/** Where an object is used: who in the loaded workspace points to it or to something in it. */
public final class Uses {

    private Uses() {
    }

    /** Names of the users of an object, each once. */
    public static List<String> of(EObject object) {
        Set<String> users = new LinkedHashSet<>();
        punchwright.model.edit.Edits.whereUsed(object).forEach(user -> users.add(name(user)));
        return List.copyOf(users);
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
