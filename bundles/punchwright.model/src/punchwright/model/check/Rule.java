// SPDX-License-Identifier: EPL-2.0
package punchwright.model.check;

import java.util.Locale;

import org.eclipse.emf.ecore.EObject;

import punchwright.model.plan.Severity;

/**
 * One rule.
 *
 * @param code     stable code, as PW-M-020; never reused for another meaning
 * @param severity how much a violation matters
 * @param type     the class whose objects it looks at
 * @param check    looks at one object and reports violations
 * @param <T>      that class
 */
public record Rule<T extends EObject>(String code, Severity severity, Class<T> type, Check<T> check) {

    /** Looks at one object. */
    @FunctionalInterface
    public interface Check<T> {
        /** Reports each violation found on the object. */
        void run(T object, Report report);
    }

    void run(EObject object, Report report) {
        if (type.isInstance(object)) {
            check.run(type.cast(object), report);
        }
    }

    /** The rule in one short sentence. */
    public String title(Locale locale) {
        return RuleTexts.text(code + ".title", locale);
    }
}
