// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.operations;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import punchwright.engine.finding.Finding;
import punchwright.model.check.Checks;
import punchwright.model.check.Violation;
import punchwright.model.files.Workspace;
import punchwright.model.files.WorkspaceException;
import punchwright.model.names.Names;
import punchwright.model.plan.PlanFactory;
import punchwright.model.plan.Severity;
import punchwright.model.work.Part;
import punchwright.planner.convert.DrawingStore;
import punchwright.planner.convert.InputException;
import punchwright.planner.convert.PartReader;
import punchwright.planner.plans.PlanWriter;

/** Checks all records of a workspace by the rules of the model, and reads every drawing. */
final class CheckOperation implements ShopOperation {

    @Override
    public String name() {
        return "check";
    }

    @Override
    public String summary() {
        return "check every record and drawing of the workspace";
    }

    @Override
    public Outcome run(Call call) throws IOException {
        try (Workspace workspace = Workspace.open(call.workspace(), Workspace.Access.READ)) {
            List<punchwright.model.plan.Finding> findings = new ArrayList<>();
            Checks.of(workspace, false).forEach(v -> findings.add(finding(v)));
            workspace.problems().forEach(p -> findings.add(finding(p)));
            drawings(workspace).forEach(f -> findings.add(PlanWriter.finding(f)));
            long errors = findings.stream().filter(f -> f.getSeverity() == Severity.ERROR).count();
            String line = String.format(Locale.ROOT, "%d items, %d orders, %d tools, %d machines checked: %d errors, %d others",
                    workspace.items().size(), workspace.orders().size(), workspace.library().getTools().size(),
                    workspace.library().getMachines().size(), errors, findings.size() - errors);
            return new Outcome(errors == 0 ? ExitCode.GOOD : ExitCode.FINDINGS, List.of(line), findings, List.of(), List.of());
        }
    }

    private static List<Finding> drawings(Workspace workspace) {
        List<Finding> findings = new ArrayList<>();
        PartReader reader = new PartReader(new DrawingStore(workspace));
        for (Part part : workspace.parts()) {
            try {
                reader.shape(part);
                findings.addAll(reader.findings(part));
            } catch (InputException e) {
                findings.add(e.finding());
            }
        }
        return findings;
    }

    private static punchwright.model.plan.Finding finding(Violation v) {
        punchwright.model.plan.Finding f = PlanFactory.eINSTANCE.createFinding();
        f.setSeverity(v.severity());
        f.setCode(v.code());
        f.setSubject(Names.of(v.object(), Locale.ENGLISH));
        f.setMessage(v.message(Locale.ENGLISH));
        f.setRemedy(v.remedy(Locale.ENGLISH));
        f.setSubjectObject(v.object());
        return f;
    }

    private static punchwright.model.plan.Finding finding(WorkspaceException e) {
        punchwright.model.plan.Finding f = PlanFactory.eINSTANCE.createFinding();
        f.setSeverity(Severity.ERROR);
        f.setCode(e.problem().code());
        f.setSubject(String.valueOf(e.file().getFileName()));
        f.setMessage(e.message(Locale.ENGLISH));
        f.setRemedy(e.remedy(Locale.ENGLISH));
        return f;
    }
}
