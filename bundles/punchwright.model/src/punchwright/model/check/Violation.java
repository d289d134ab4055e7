// SPDX-License-Identifier: EPL-2.0
package punchwright.model.check;

import java.util.List;
import java.util.Locale;

import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

import punchwright.model.names.Names;
import punchwright.model.plan.Severity;

/**
 * One object that breaks one rule.
 *
 * @param code      the rule's code
 * @param severity  the rule's severity
 * @param object    the object concerned
 * @param feature   the feature concerned; null when it is the object as a whole
 * @param arguments values for the texts
 */
public record Violation(String code, Severity severity, EObject object, EStructuralFeature feature, List<Object> arguments) {

    /** Copies the arguments. */
    public Violation {
        arguments = List.copyOf(arguments);
    }

    /** What is the case: the object, the value with its unit. */
    public String message(Locale locale) {
        return RuleTexts.text(code + ".message", locale, shown(locale));
    }

    /** The way out. */
    public String remedy(Locale locale) {
        return RuleTexts.text(code + ".remedy", locale, shown(locale));
    }

    private Object[] shown(Locale locale) {
        Object[] shown = new Object[arguments.size() + 1];
        shown[0] = Names.of(object, locale);
        for (int i = 0; i < arguments.size(); i++) {
            shown[i + 1] = switch (arguments.get(i)) {
                case EStructuralFeature f -> Names.of(f, locale);
                case EObject o -> Names.of(o, locale);
                case Enumerator e -> Names.of(e, locale);
                case Object o -> o;
            };
        }
        return shown;
    }

    @Override
    public String toString() {
        return code + " " + severity + ": " + message(Locale.ENGLISH) + " " + remedy(Locale.ENGLISH);
    }
}
