// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.costing;

import static punchwright.engine.costing.Formulas.add;
import static punchwright.engine.costing.Formulas.div;
import static punchwright.engine.costing.Formulas.mul;
import static punchwright.engine.costing.Formulas.num;
import static punchwright.engine.costing.Formulas.ref;
import static punchwright.engine.costing.Formulas.sum;

import java.util.ArrayList;
import java.util.List;

/** Cells of one material and thickness: sheets, time, set-up, and the sums by which parts share them. */
final class WorkCells {

    private WorkCells() {
    }

    static String scope(int work) {
        return "J" + (work + 1);
    }

    static void addTo(CostContext c, CostJob job, int index) {
        SheetWork work = job.works().get(index);
        String scope = scope(index);
        String material = c.word("Mat", work.materialId());
        c.under("section.stock", c.text("heading.material", work.label()));
        c.shared(CellNames.of(material, "scrap_value"), c.text("mat.scrap_value"), "$/kg", work.scrapValuePerKg(),
                "src.material");
        c.shared(CellNames.of(material, "life_factor"), c.text("mat.life_factor"), "", work.lifeFactor(), "src.material");
        runs(c, work, scope);
        shares(c, job, index, scope);
        MaterialCost.addTo(c, work, scope, sum(members(job, index).stream()
                .map(p -> mul(ref(PartCells.own(c, p, "placed")), ref(PartCells.own(c, p, "mass")))).toList()));
        time(c, work, scope);
        setUp(c, work, scope);
    }

    /** Indices of the parts of a work. */
    static List<Integer> members(CostJob job, int work) {
        List<Integer> result = new ArrayList<>();
        for (int i = 0; i < job.parts().size(); i++) {
            if (job.parts().get(i).work() == work) {
                result.add(i);
            }
        }
        return result;
    }

    private static void runs(CostContext c, SheetWork work, String scope) {
        for (int i = 0; i < work.runs().size(); i++) {
            SheetRun run = work.runs().get(i);
            String layout = "S" + (i + 1);
            c.under("section.work", c.text("heading.layout", work.label(), i + 1, run.label()));
            c.input(c.own(scope, layout, "runs"), "j.runs", "pcs", run.runs(), "src.plan");
            c.input(c.own(scope, layout, "cycle"), "j.cycle", "s", run.cycleS(), "src.plan");
            c.input(c.own(scope, layout, "remnant_mass"), "j.remnant_per_sheet", "kg", run.remnantMassKg(), "src.plan");
        }
    }

    private static void shares(CostContext c, CostJob job, int index, String scope) {
        List<Expression> area = new ArrayList<>();
        List<Expression> time = new ArrayList<>();
        for (int part : members(job, index)) {
            PartCells.addInputs(c, job.parts().get(part), part);
            area.add(mul(ref(PartCells.own(c, part, "placed")), ref(PartCells.own(c, part, "area"))));
            time.add(mul(ref(PartCells.own(c, part, "placed")), ref(PartCells.own(c, part, "time"))));
        }
        c.under("section.work", job.works().get(index).label());
        c.formula(c.own(scope, "area_sum"), "j.area_sum", "mm2", sum(area), "src.share");
        c.formula(c.own(scope, "time_sum"), "j.time_sum", "s", sum(time), "src.share");
        if (c.value(c.own(scope, "time_sum")) <= 0) {
            c.report(CostReason.TIME_SHARE, job.works().get(index).label());
        }
    }

    private static void time(CostContext c, SheetWork work, String scope) {
        List<Expression> seconds = new ArrayList<>();
        for (int i = 0; i < work.runs().size(); i++) {
            seconds.add(mul(ref(c.own(scope, "S" + (i + 1), "runs")), ref(c.own(scope, "S" + (i + 1), "cycle"))));
        }
        c.formula(c.own(scope, "run_hours"), "j.run_hours", "h", div(sum(seconds), num(3600)), "src.plan");
    }

    private static void setUp(CostContext c, SheetWork work, String scope) {
        String tools = c.input(c.own(scope, "tools_to_load"), "j.tools_to_load", "pcs", work.toolsToLoad(), "src.plan");
        String minutes = c.formula(c.own(scope, "set_up_minutes"), "j.set_up_minutes", "min",
                add(ref("R_set_up_base"), mul(ref(tools), ref("R_set_up_per_tool"))), "src.own");
        Expression hours = div(ref(minutes), num(60));
        c.formula(c.own(scope, "set_up_labour"), "j.set_up_labour", "$", mul(hours, ref("R_set_up")), "src.own");
        c.formula(c.own(scope, "set_up_machine"), "j.set_up_machine", "$", mul(hours, ref(c.own("H", "rate"))), "src.own");
    }
}
