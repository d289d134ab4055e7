// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.plans;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import punchwright.engine.costing.CostJob;
import punchwright.engine.costing.CostSheet;
import punchwright.engine.costing.OrderCost;
import punchwright.engine.finding.Finding;
import punchwright.engine.planning.EnginePlan;
import punchwright.engine.planning.PartDemand;
import punchwright.engine.planning.PlanRequest;
import punchwright.engine.planning.Planner;
import punchwright.engine.planning.PlanningRules;
import punchwright.engine.planning.Progress;
import punchwright.model.files.WorkspacePaths;
import punchwright.model.plan.Plan;
import punchwright.model.plan.PlanStatus;
import punchwright.model.shop.Library;
import punchwright.model.shop.Machine;
import punchwright.model.work.Order;
import punchwright.model.work.Part;
import punchwright.planner.convert.DrawingStore;
import punchwright.planner.convert.InputException;
import punchwright.planner.convert.MachineReader;
import punchwright.planner.convert.OrderReader;
import punchwright.planner.convert.PartReader;
import punchwright.planner.convert.ShopLayerRules;
import punchwright.planner.convert.StockReader;
import punchwright.planner.convert.ToolReader;

/** Plans an order on a machine: model in, model out. */
public final class OrderPlanning {

    private final Library library;
    private final DrawingStore drawings;
    private final String programVersion;

    public OrderPlanning(Library library, WorkspacePaths paths, String programVersion) {
        this.library = library;
        this.drawings = new DrawingStore(paths, ShopLayerRules.of(library));
        this.programVersion = programVersion;
    }

    /**
     * The plan of an order on a machine, with its cost when it can be made. Reads the model, changes nothing in it.
     *
     * @throws punchwright.engine.planning.CancelledException when the person cancels
     */
    public Plan plan(Order order, Machine machine, Progress progress) {
        List<Finding> input = new ArrayList<>();
        Map<String, Part> parts = new LinkedHashMap<>();
        List<PartDemand> demands = demands(order, parts, input);
        PlanRequest request = new PlanRequest(order.getNumber(), MachineReader.read(machine),
                LibraryTools.read(library, drawings, input),
                ToolReader.usableHolders(library.getHolders()), demands, StockReader.read(library.getStock()),
                PlanningRules.USUAL, MachineReader.readiness(machine, library.getRates()), LibraryTools.elsewhere(library));
        PlanWriter.Origin origin = new PlanWriter.Origin(order, machine, library, parts, programVersion);
        EnginePlan engine = input.stream().anyMatch(Finding::isError) ? new EnginePlan(request, List.of(), input)
                : Planner.plan(request, progress);
        Plan plan = new PlanWriter(origin).write(engine);
        if (plan.getStatus() == PlanStatus.PROVEN) {
            addCost(plan, origin, engine);
            input.forEach(f -> plan.getFindings().add(PlanWriter.finding(f)));
        }
        return plan;
    }

    private List<PartDemand> demands(Order order, Map<String, Part> parts, List<Finding> input) {
        List<PartDemand> demands = new ArrayList<>();
        PartReader reader = new PartReader(drawings);
        try {
            OrderReader.pieces(order).forEach((part, pieces) -> {
                try {
                    parts.put(part.getId(), part);
                    demands.add(reader.demand(part, pieces));
                    input.addAll(reader.findings(part));
                } catch (InputException e) {
                    input.add(e.finding());
                }
            });
        } catch (InputException e) {
            input.add(e.finding());
        }
        return demands;
    }

    private static void addCost(Plan plan, PlanWriter.Origin origin, EnginePlan engine) {
        CostJob job = new CostInput(origin, engine).job();
        CostSheet cost = OrderCost.calculate(job);
        CostFigures.store(plan, job, cost, origin.order().getLines());
        cost.findings().forEach(f -> plan.getFindings().add(PlanWriter.finding(f)));
    }
}
