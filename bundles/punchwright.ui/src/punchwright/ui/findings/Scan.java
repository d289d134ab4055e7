// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.findings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.ConcurrentModificationException;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.swt.widgets.Display;

import punchwright.model.files.FileProblem;
import punchwright.model.files.WorkspaceException;
import punchwright.model.plan.Plan;
import punchwright.model.shop.Named;
import punchwright.ui.form.Verdict;
import punchwright.ui.form.Verdicts;
import punchwright.ui.session.Session;
import punchwright.ui.text.Texts;

/**
 * Collects the findings of a workspace, gravest first. The rules look at the model's own objects, which belong to the UI thread,
 * so the work is done there in small pieces between which the window works; a new scan or a change ends the one before.
 */
final class Scan {

    private static final long PIECE_NS = 12_000_000;
    private static final int PAUSE_MS = 5;

    private final Session session;
    private final Consumer<List<FindingRow>> result;
    private final List<FindingRow> rows = new ArrayList<>();
    private final List<EObject> roots = new ArrayList<>();
    private Iterator<EObject> current;
    private String origin = "";
    private boolean stopped;

    /** A scan that hands its rows to {@code result}, unless it is stopped. */
    Scan(Session session, Consumer<List<FindingRow>> result) {
        this.session = session;
        this.result = result;
    }

    void start() {
        session.workspace().problems().forEach(problem -> rows.add(ofFile(problem)));
        for (Resource resource : session.workspace().resourceSet().getResources()) {
            for (EObject root : resource.getContents()) {
                if (root instanceof Plan plan) {
                    plan.getFindings().forEach(f -> rows.add(FindingRow.of(f, plan.getName())));
                } else {
                    roots.add(root);
                }
            }
        }
        piece();
    }

    void stop() {
        stopped = true;
    }

    private void piece() {
        if (stopped) {
            return;
        }
        long end = System.nanoTime() + PIECE_NS;
        try {
            while (System.nanoTime() < end) {
                if (!step()) {
                    rows.sort(Comparator.comparingInt(FindingRow::rank));
                    result.accept(rows);
                    return;
                }
            }
        } catch (ConcurrentModificationException e) {
            // Something was edited between two pieces; the edit has already asked for a new scan.
            return;
        }
        Display.getCurrent().timerExec(PAUSE_MS, this::piece);
    }

    private boolean step() {
        if (current == null || !current.hasNext()) {
            if (roots.isEmpty()) {
                return false;
            }
            EObject root = roots.remove(0);
            origin = root instanceof Named named && named.getName() != null ? named.getName() : Texts.of(root.eClass());
            current = EcoreUtil.getAllContents(List.of(root));
        }
        if (current.hasNext()) {
            for (Verdict v : Verdicts.alone(current.next())) {
                rows.add(new FindingRow(v.rank(), v.code(), origin, v.subject(), v.message(), v.remedy(), v.target(), v.feature(),
                        Double.NaN, Double.NaN));
            }
        }
        return true;
    }

    private static FindingRow ofFile(WorkspaceException problem) {
        int rank = problem.problem() == FileProblem.MIGRATED ? 2 : 0;
        return new FindingRow(rank, problem.problem().code(), Texts.of("findings.file"), problem.file().getFileName().toString(),
                problem.message(Locale.getDefault()), problem.remedy(Locale.getDefault()), null, "", Double.NaN, Double.NaN);
    }
}
