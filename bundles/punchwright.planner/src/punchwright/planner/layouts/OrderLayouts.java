// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.layouts;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import punchwright.engine.finding.Finding;
import punchwright.engine.planning.PlanRequest;
import punchwright.engine.planning.Planner;
import punchwright.engine.planning.PlanningRules;
import punchwright.engine.planning.Progress;
import punchwright.engine.planning.SheetLayouts;
import punchwright.model.files.WorkspacePaths;
import punchwright.model.shop.Library;
import punchwright.model.shop.Machine;
import punchwright.model.work.Order;
import punchwright.model.work.Part;
import punchwright.planner.plans.OrderInput;

/** Lays out an order for a machine without a whole plan. Reads the model, changes nothing in it. */
public final class OrderLayouts {

    private final OrderInput input;

    public OrderLayouts(Library library, WorkspacePaths paths) {
        input = new OrderInput(library, paths);
    }

    /**
     * How to lay out.
     *
     * @param withKept  whether layouts that the engineer arranged stay as they are
     * @param fill      whether sheets are filled; else the result tells webs, margins and stock only
     * @param webMm     web between neighbours, mm; 0 for the least that no hit beside a part reaches beyond
     * @param workLimit trial placements at most for each material and thickness; 0 for the usual
     */
    public record Options(boolean withKept, boolean fill, double webMm, long workLimit) {

        /** With kept layouts, the usual web and work. */
        public static final Options USUAL = new Options(true, true, 0, 0);
        /** Webs, margins and stock only. */
        public static final Options INPUT_ONLY = new Options(false, false, 0, 0);

        /** The same with the program's own layouts only. */
        public Options withoutKept() {
            return new Options(false, fill, webMm, workLimit);
        }

        /** The same with another web. */
        public Options web(double mm) {
            return new Options(withKept, fill, mm, workLimit);
        }
    }

    /**
     * What came out.
     *
     * @param machine  the machine
     * @param sheets   layouts by material and thickness
     * @param parts    parts of the order by id
     * @param findings everything noticed
     */
    public record Result(Machine machine, List<SheetLayouts> sheets, Map<String, Part> parts, List<Finding> findings) {

        /** Whether every piece that must be made lies on a sheet. */
        public boolean complete() {
            return findings.stream().noneMatch(Finding::isError);
        }
    }

    /**
     * The layouts of an order on a machine.
     *
     * @throws punchwright.engine.planning.CancelledException when the person cancels before there is a layout; later the best
     *                                                        so far is the result
     */
    public Result of(Order order, Machine machine, Options options, Progress progress) {
        OrderInput.Reading reading = input.read(order, machine, options.withKept());
        List<Finding> findings = new ArrayList<>(reading.findings());
        if (reading.failed()) {
            return new Result(machine, List.of(), reading.parts(), findings);
        }
        List<SheetLayouts> sheets = Planner.layouts(limited(reading.request(), options.workLimit()), options.webMm(),
                options.fill(), progress);
        sheets.forEach(s -> findings.addAll(s.findings()));
        return new Result(machine, sheets, reading.parts(), findings);
    }

    private static PlanRequest limited(PlanRequest r, long work) {
        PlanningRules u = r.rules();
        return work <= 0 ? r : new PlanRequest(r.title(), r.machine(), r.tools(), r.holders(), r.demands(), r.stock(),
                new PlanningRules(u.tooling(), u.edgeMm(), u.clampStripMm(), u.skeletonMm(), work, u.seed(), u.order()),
                r.readiness(),
                r.elsewhere(), r.kept());
    }
}
