// SPDX-License-Identifier: EPL-2.0
package punchwright.model.edit;

import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

import punchwright.model.shop.Identified;

/** Gives objects identifiers that are free in one file. */
final class FreeIds {

    private final Set<String> taken = new HashSet<>();

    FreeIds(EObject root) {
        take(root);
    }

    /** Counts the identifiers of an object and of what it contains as taken. */
    void take(EObject root) {
        for (Iterator<EObject> all = EcoreUtil.getAllContents(List.of(root)); all.hasNext();) {
            if (all.next() instanceof Identified identified && identified.getId() != null) {
                taken.add(identified.getId());
            }
        }
    }

    /** Changes the identifiers of an object and of what it contains where they are missing or taken. */
    void giveTo(EObject root) {
        for (Iterator<EObject> all = EcoreUtil.getAllContents(List.of(root)); all.hasNext();) {
            if (all.next() instanceof Identified identified) {
                String wanted = identified.getId() == null || identified.getId().isBlank()
                        ? identified.eClass().getName().toLowerCase(Locale.ROOT) : identified.getId();
                String free = free(wanted);
                if (!free.equals(identified.getId())) {
                    identified.setId(free);
                }
                taken.add(free);
            }
        }
    }

    private String free(String wanted) {
        if (!taken.contains(wanted)) {
            return wanted;
        }
        String stem = wanted.replaceFirst("-\\d+$", "");
        int number = 2;
        while (taken.contains(stem + "-" + number)) {
            number++;
        }
        return stem + "-" + number;
    }
}
