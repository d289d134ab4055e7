// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.form;

import java.util.List;
import java.util.Locale;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

import punchwright.model.check.Checks;
import punchwright.model.check.Violation;
import punchwright.model.names.Names;

/** What the model's rules say about an object, as it is or as it would be. */
public final class Verdicts {

    private Verdicts() {
    }

    /** Verdicts on an object and all it contains, gravest first. */
    public static List<Verdict> of(EObject object) {
        return Checks.of(object).stream().map(Verdicts::verdict).toList();
    }

    /** Verdicts on an object alone, not on what it contains. */
    public static List<Verdict> alone(EObject object) {
        return Checks.alone(object).stream().map(Verdicts::verdict).toList();
    }

    private static Verdict verdict(Violation v) {
        Locale locale = Locale.getDefault();
        return new Verdict(2 - v.severity().getValue(), v.code(), Names.of(v.object(), locale), v.message(locale),
                v.remedy(locale), v.object(), v.feature() == null ? "" : v.feature().getName());
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
