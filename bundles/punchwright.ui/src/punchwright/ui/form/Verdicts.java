// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.form;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** What the model's rules say about an object, as it is or as it would be. */
public final class Verdicts {

    private Verdicts() {
    }

    /** Verdicts on an object as it is, gravest first. */
    public static List<Verdict> of(EObject object) {
        List<Verdict> found = new ArrayList<>();
        found.sort(Comparator.comparingInt(Verdict::rank));
        return found;
    }

    /** Verdicts on an object as it would be with a value that is still being typed. The object itself is not touched. */
    static List<Verdict> ofTrial(EObject object, Field field, Object value) {
        EObject trial = EcoreUtil.copy(object);
        EObject holder = field.holder(trial);
        if (holder == null) {
            holder = EcoreUtil.create(field.via().getEReferenceType());
            trial.eSet(field.via(), holder);
        }
        holder.eSet(field.feature(), value);
        return of(trial);
    }
}
