// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.operations;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import punchwright.model.files.Workspace;
import punchwright.model.files.WorkspacePaths;
import punchwright.model.plan.Finding;
import punchwright.model.plan.Plan;
import punchwright.model.shop.Machine;
import punchwright.model.work.Order;
import punchwright.planner.plans.OrderPlanning;

/** The main job on a whole workspace: plans every order on every machine in use and writes the spreadsheets. */
final class DemoOperation implements ShopOperation {

    private final Reports reports;
    private final String programVersion;

    DemoOperation(Reports reports, String programVersion) {
        this.reports = reports;
        this.programVersion = programVersion;
    }

    @Override
    public String name() {
        return "demo";
    }

    @Override
    public String summary() {
        return "plan every order on every machine that can make it; write process sheets and cost roll-ups to out/";
    }

    @Override
    public Outcome run(Call call) throws IOException {
        try (Workspace workspace = Workspace.open(call.workspace(), Workspace.Access.READ)) {
            Path folder = call.workspace().resolve(WorkspacePaths.OUT);
            OrderPlanning planning = new OrderPlanning(workspace.library(), workspace.paths(), programVersion);
            Totals totals = new Totals();
            for (Order order : workspace.orders()) {
                List<Plan> plans = new ArrayList<>();
                for (Machine machine : PlanOperation.inUse(workspace)) {
                    plans.add(planning.plan(order, machine, call.progress()));
                }
                totals.add(order, plans);
                if (plans.stream().anyMatch(PlanTable::proven)) {
                    totals.files.addAll(ExportOperation.write(reports, workspace, order, plans, folder));
                }
            }
            return totals.outcome(folder);
        }
    }

    /** What is printed at the end. */
    private static final class Totals {

        private final List<String> lines = new ArrayList<>(PlanTable.HEADER);
        private final List<Finding> findings = new ArrayList<>();
        private final List<Path> files = new ArrayList<>();
        private final List<Plan> plans = new ArrayList<>();
        private final List<String> unmade = new ArrayList<>();

        void add(Order order, List<Plan> made) {
            plans.addAll(made);
            for (Plan plan : made) {
                lines.addAll(PlanTable.lines(plan));
                findings.addAll(plan.getFindings());
            }
            if (made.stream().noneMatch(PlanTable::proven)) {
                unmade.add(order.getNumber());
            }
        }

        Outcome outcome(Path folder) {
            lines.add("");
            files.forEach(f -> lines.add("wrote " + folder.getFileName() + "/" + folder.relativize(f)));
            lines.add(files.size() + " workbooks in " + folder);
            if (!unmade.isEmpty()) {
                lines.add("No machine can make: " + String.join(", ", unmade));
            }
            return new Outcome(unmade.isEmpty() ? ExitCode.GOOD : ExitCode.FINDINGS, lines, findings, files, plans);
        }
    }
}
