// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.findings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.resource.Resource;

import punchwright.model.files.FileProblem;
import punchwright.model.files.WorkspaceException;
import punchwright.model.plan.Plan;
import punchwright.model.shop.Named;
import punchwright.ui.form.Verdict;
import punchwright.ui.form.Verdicts;
import punchwright.ui.session.Session;
import punchwright.ui.text.Texts;

/** Collects the findings of a workspace, gravest first. */
final class AllFindings {

    private AllFindings() {
    }

    static List<FindingRow> of(Session session) {
        List<FindingRow> rows = new ArrayList<>();
        for (WorkspaceException problem : session.workspace().problems()) {
            rows.add(ofFile(problem));
        }
        for (Resource resource : session.workspace().resourceSet().getResources()) {
            for (EObject root : resource.getContents()) {
                if (root instanceof Plan plan) {
                    plan.getFindings().forEach(f -> rows.add(FindingRow.of(f, plan.getName())));
                } else {
                    ofRecords(root, rows);
                }
            }
        }
        rows.sort(Comparator.comparingInt(FindingRow::rank));
        return rows;
    }

    private static FindingRow ofFile(WorkspaceException problem) {
        int rank = problem.problem() == FileProblem.MIGRATED ? 2 : 0;
        return new FindingRow(rank, problem.problem().code(), Texts.of("findings.file"), problem.file().getFileName().toString(),
                problem.message(Locale.getDefault()), problem.remedy(Locale.getDefault()), null, "", Double.NaN, Double.NaN);
    }

    private static void ofRecords(EObject root, List<FindingRow> rows) {
        String origin = root instanceof Named named && named.getName() != null ? named.getName() : Texts.of(root.eClass());
        for (Verdict verdict : Verdicts.of(root)) {
            rows.add(new FindingRow(verdict.rank(), verdict.code(), origin, verdict.subject(), verdict.message(), verdict.remedy(),
                    verdict.target(), verdict.feature(), Double.NaN, Double.NaN));
        }
    }
}
