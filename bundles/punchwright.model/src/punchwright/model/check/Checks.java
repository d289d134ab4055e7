// SPDX-License-Identifier: EPL-2.0
package punchwright.model.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import org.eclipse.emf.common.util.BasicDiagnostic;
import org.eclipse.emf.common.util.Diagnostic;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EValidator;
import org.eclipse.emf.ecore.util.Diagnostician;

import punchwright.model.files.Workspace;
import punchwright.model.files.WorkspaceException;

/** Checks model objects against all rules: the package's entry. */
public final class Checks {

    private static final Comparator<Violation> WORST_FIRST = Comparator.comparing(Violation::severity).reversed();

    private Checks() {
    }

    /** Checks one object alone, not what it contains; for whoever checks a large library piece by piece. */
    public static List<Violation> alone(EObject object) {
        ModelValidator.register();
        BasicDiagnostic diagnostics = new BasicDiagnostic();
        EValidator.Registry.INSTANCE.getEValidator(object.eClass().getEPackage())
                .validate(object.eClass(), object, diagnostics, new LinkedHashMap<>(Map.of(Locale.class, Locale.ENGLISH)));
        return violations(diagnostics);
    }

    /** Checks an object and everything it contains; worst first, then in the order of the file. */
    public static List<Violation> of(EObject root) {
        ModelValidator.register();
        Diagnostician diagnostician = new Diagnostician();
        Map<Object, Object> context = new LinkedHashMap<>();
        context.put(Locale.class, Locale.ENGLISH);
        BasicDiagnostic diagnostics = diagnostician.createDefaultDiagnostic(root);
        diagnostician.validate(root, diagnostics, context);
        return violations(diagnostics);
    }

    private static List<Violation> violations(Diagnostic diagnostics) {
        List<Violation> violations = new ArrayList<>();
        for (Diagnostic diagnostic : diagnostics.getChildren()) {
            if (diagnostic.getData().size() > 2 && diagnostic.getData().get(2) instanceof Violation violation) {
                violations.add(violation);
            }
        }
        violations.sort(WORST_FIRST);
        return violations;
    }

    /** Checks the library, every item, every order and, when asked for, every plan. */
    public static List<Violation> of(Workspace workspace, boolean withPlans) throws WorkspaceException {
        List<EObject> roots = new ArrayList<>(List.of(workspace.library()));
        roots.addAll(workspace.items());
        roots.addAll(workspace.orders());
        if (withPlans) {
            roots.addAll(workspace.plans());
        }
        List<Violation> violations = new ArrayList<>();
        for (EObject root : roots) {
            violations.addAll(of(root));
        }
        violations.sort(WORST_FIRST);
        return violations;
    }
}
