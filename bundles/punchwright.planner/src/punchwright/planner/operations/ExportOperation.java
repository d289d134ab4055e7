// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.operations;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

import punchwright.model.files.Workspace;
import punchwright.model.files.WorkspacePaths;
import punchwright.model.plan.Plan;
import punchwright.model.work.Order;
import punchwright.planner.convert.DrawingStore;
import punchwright.planner.convert.PartReader;

/** Writes the process sheets and the cost roll-up of an order's plans. */
final class ExportOperation implements ShopOperation {

    private final Reports reports;

    ExportOperation(Reports reports) {
        this.reports = reports;
    }

    @Override
    public String name() {
        return "export";
    }

    @Override
    public String summary() {
        return "write the process sheets and the cost roll-up of an order's kept plans";
    }

    @Override
    public String usage() {
        return "ORDER [--to FOLDER]";
    }

    @Override
    public Set<String> options() {
        return Set.of("to");
    }

    @Override
    public Outcome run(Call call) throws IOException {
        if (call.words().size() != 1) {
            throw new UsageException("export takes one order number");
        }
        try (Workspace workspace = Workspace.open(call.workspace(), Workspace.Access.READ)) {
            Order order = Finder.order(workspace, call.words().get(0));
            List<Plan> plans = workspace.plans().stream().filter(p -> p.getOrder() == order).toList();
            if (plans.stream().noneMatch(PlanTable::proven)) {
                throw new NotFoundException("proven plan of order", order.getNumber(), "");
            }
            Path folder = Path.of(call.option("to", call.workspace().resolve(WorkspacePaths.OUT).toString()));
            List<Path> files = write(reports, workspace, order, plans, folder);
            return new Outcome(ExitCode.GOOD, files.stream().map(Path::toString).toList(), List.of(), files, plans);
        }
    }

    /** One process sheet for each plan that is proven, one roll-up for the order from all its plans. */
    static List<Path> write(Reports reports, Workspace workspace, Order order, List<Plan> plans, Path folder)
            throws IOException {
        List<Path> files = new ArrayList<>();
        PartReader parts = new PartReader(new DrawingStore(workspace));
        for (Plan plan : plans) {
            if (PlanTable.proven(plan)) {
                files.add(reports.processSheet(plan, workspace.library(), parts::shapeOrNull, folder));
            }
        }
        files.add(reports.costRollup(order, plans, workspace.library(), folder));
        return files;
    }
}
