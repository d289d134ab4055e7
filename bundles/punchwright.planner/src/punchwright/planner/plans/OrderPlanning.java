// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.plans;

import java.util.List;

import punchwright.engine.costing.CostJob;
import punchwright.engine.costing.CostSheet;
import punchwright.engine.costing.OrderCost;
import punchwright.engine.planning.EnginePlan;
import punchwright.engine.planning.Planner;
import punchwright.engine.planning.Progress;
import punchwright.model.files.WorkspacePaths;
import punchwright.model.plan.Plan;
import punchwright.model.plan.PlanStatus;
import punchwright.model.shop.Library;
import punchwright.model.shop.Machine;
import punchwright.model.work.Order;

/** Plans an order on a machine: model in, model out. */
public final class OrderPlanning {

    private final Library library;
    private final WorkspacePaths paths;
    private final String programVersion;

    public OrderPlanning(Library library, WorkspacePaths paths, String programVersion) {
        this.library = library;
        this.paths = paths;
        this.programVersion = programVersion;
    }

    /**
     * The plan of an order on a machine, with its cost when it can be made. Reads the model, changes nothing in it.
     *
     * @throws punchwright.engine.planning.CancelledException when the person cancels
     */
    public Plan plan(Order order, Machine machine, Progress progress) {
        OrderInput.Reading input = new OrderInput(library, paths).read(order, machine, true);
        PlanWriter.Origin origin = new PlanWriter.Origin(order, machine, library, input.parts(), programVersion);
        EnginePlan engine = input.failed() ? new EnginePlan(input.request(), List.of(), input.findings())
                : Planner.plan(input.request(), progress);
        Plan plan = new PlanWriter(origin).write(engine);
        if (plan.getStatus() == PlanStatus.PROVEN) {
            addCost(plan, origin, engine);
            input.findings().forEach(f -> plan.getFindings().add(PlanWriter.finding(f)));
        }
        return plan;
    }

    private static void addCost(Plan plan, PlanWriter.Origin origin, EnginePlan engine) {
        CostJob job = new CostInput(origin, engine).job();
        CostSheet cost = OrderCost.calculate(job);
        CostFigures.store(plan, job, cost, List.copyOf(MadeLines.of(origin.order(), engine).keySet()));
        cost.findings().forEach(f -> plan.getFindings().add(PlanWriter.finding(f)));
    }
}
