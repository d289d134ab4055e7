// SPDX-License-Identifier: EPL-2.0
package punchwright.model.check;

import java.util.List;
import java.util.Locale;
import java.util.Map;

import org.eclipse.emf.common.util.BasicDiagnostic;
import org.eclipse.emf.common.util.Diagnostic;
import org.eclipse.emf.common.util.DiagnosticChain;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.EValidator;
import org.eclipse.emf.ecore.util.EObjectValidator;

import punchwright.model.plan.PlanPackage;
import punchwright.model.plan.Severity;
import punchwright.model.shop.ShopPackage;
import punchwright.model.work.WorkPackage;

/**
 * Runs the table of rules as the EMF validator of the three packages.
 *
 * <p>Each diagnostic has the source {@link #SOURCE}, the object as its first datum, the feature (or null) as its second and the
 * {@link Violation} as its third. The text is in the language under {@link Locale} in the context, or English.</p>
 */
public final class ModelValidator extends EObjectValidator {

    /** Source of every diagnostic. */
    public static final String SOURCE = "punchwright.model";

    private static final ModelValidator INSTANCE = new ModelValidator();

    private ModelValidator() {
    }

    /** Makes this the validator of the model's packages; more than once does no harm. */
    public static void register() {
        for (var type : List.of(ShopPackage.eINSTANCE, WorkPackage.eINSTANCE, PlanPackage.eINSTANCE)) {
            EValidator.Registry.INSTANCE.put(type, INSTANCE);
        }
    }

    @Override
    public boolean validate(EClass type, EObject object, DiagnosticChain diagnostics, Map<Object, Object> context) {
        Locale locale = context != null && context.get(Locale.class) instanceof Locale l ? l : Locale.ENGLISH;
        boolean[] good = {true};
        for (Rule<?> rule : Rules.list()) {
            rule.run(object, new Report() {
                @Override
                public void add(EStructuralFeature feature, Object... arguments) {
                    on(object, feature, arguments);
                }

                @Override
                public void on(EObject other, EStructuralFeature feature, Object... arguments) {
                    good[0] = false;
                    if (diagnostics != null) {
                        Violation violation = new Violation(rule.code(), rule.severity(), other, feature, List.of(arguments));
                        diagnostics.add(diagnosticOf(violation, locale));
                    }
                }
            });
        }
        return good[0];
    }

    private static Diagnostic diagnosticOf(Violation violation, Locale locale) {
        int number = Integer.parseInt(violation.code().substring(violation.code().length() - 3));
        return new BasicDiagnostic(severityOf(violation.severity()), SOURCE, number,
                violation.code() + ": " + violation.message(locale) + " " + violation.remedy(locale),
                new Object[] {violation.object(), violation.feature(), violation});
    }

    private static int severityOf(Severity severity) {
        return switch (severity) {
            case NOTE -> Diagnostic.INFO;
            case WARNING -> Diagnostic.WARNING;
            case ERROR -> Diagnostic.ERROR;
        };
    }
}
