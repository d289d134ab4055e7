// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.job;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.resource.ResourceSet;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * Brings an object that was made beside the window, with references into a second reading of the same folder, into the open workspace: a copy
 * whose references lead to the same identifiers here.
 */
final class Adopt {

    private Adopt() {
    }

    /** The copy; a reference whose target is not here any more is left out. */
    @SuppressWarnings("unchecked")
    static <T extends EObject> T into(ResourceSet here, T made) {
        EcoreUtil.Copier copier = new EcoreUtil.Copier();
        T copy = (T) copier.copy(made);
        copier.copyReferences();
        Map<EObject, Collection<EStructuralFeature.Setting>> outside = EcoreUtil.ExternalCrossReferencer.find(copy);
        outside.forEach((target, settings) -> {
            EObject counterpart = counterpart(here, target);
            settings.forEach(setting -> lead(setting, target, counterpart));
        });
        return copy;
    }

    private static EObject counterpart(ResourceSet here, EObject target) {
        URI uri = EcoreUtil.getURI(target);
        return uri == null || uri.trimFragment().isEmpty() ? null : here.getEObject(uri, false);
    }

    @SuppressWarnings("unchecked")
    private static void lead(EStructuralFeature.Setting setting, EObject from, EObject to) {
        if (!setting.getEStructuralFeature().isMany()) {
            setting.set(to);
            return;
        }
        List<Object> list = (List<Object>) setting.get(true);
        List<Object> now = new ArrayList<>();
        for (Object each : list) {
            if (each != from) {
                now.add(each);
            } else if (to != null) {
                now.add(to);
            }
        }
        list.clear();
        list.addAll(now);
    }
}
