// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.planning;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import punchwright.engine.finding.Finding;

/** Entry of the engine: plans one order on one machine. */
public final class Planner {

    private final PlanRequest request;
    private final Progress progress;

    private Planner(PlanRequest request, Progress progress) {
        this.request = request;
        this.progress = progress;
    }

    /**
     * Plans an order on a machine. Never fails for a reason of the trade: what cannot be made is a finding.
     *
     * @param request  order, machine, tools, stock and rules
     * @param progress told about each sheet job; asked whether to go on
     * @return the plan with the findings of every stage
     * @throws CancelledException when the person cancels
     */
    public static EnginePlan plan(PlanRequest request, Progress progress) {
        return new Planner(request, progress).run();
    }

    /**
     * Layouts of an order on a machine, without holding, sequence, time and proof: the tools are chosen for the webs only.
     * A cancel while sheets are filled keeps the best so far.
     *
     * @param request  as for {@link #plan}
     * @param webMm    web between neighbours, mm; 0 for the least that no hit beside a part reaches beyond
     * @param nest     whether sheets are filled; else the layouts are empty and the rest tells what would be asked
     * @param progress told about each sheet job; asked whether to go on
     * @return one entry for each material and thickness, in the order of the demands
     * @throws CancelledException when the person cancels before there is a layout
     */
    public static List<SheetLayouts> layouts(PlanRequest request, double webMm, boolean nest, Progress progress) {
        Planner planner = new Planner(request, progress);
        List<SheetLayouts> all = new ArrayList<>();
        Map<String, List<PartDemand>> groups = planner.bySheet();
        for (List<PartDemand> group : groups.values()) {
            progress.at(SheetJobPlanner.describe(group.get(0)), (double) all.size() / groups.size());
            all.add(new SheetJobPlanner(request, group, progress).layouts(webMm, nest));
        }
        return all;
    }

    private EnginePlan run() {
        List<Finding> findings = new ArrayList<>();
        List<SheetJob> jobs = new ArrayList<>();
        if (request.demands().isEmpty()) {
            findings.add(Finding.of(PlanningReason.NO_PARTS, request.title(), request.title()));
        }
        Map<String, List<PartDemand>> groups = bySheet();
        int done = 0;
        for (List<PartDemand> group : groups.values()) {
            progress.check();
            progress.at(SheetJobPlanner.describe(group.get(0)), (double) done++ / groups.size());
            SheetJob job = new SheetJobPlanner(request, group, progress).plan();
            jobs.add(job);
            findings.addAll(job.findings());
        }
        progress.at(request.title(), 1);
        return new EnginePlan(request, jobs, findings);
    }

    private Map<String, List<PartDemand>> bySheet() {
        Map<String, List<PartDemand>> groups = new LinkedHashMap<>();
        for (PartDemand d : request.demands()) {
            groups.computeIfAbsent(d.material().id() + "|" + d.thicknessMm(), k -> new ArrayList<>()).add(d);
        }
        return groups;
    }
}
