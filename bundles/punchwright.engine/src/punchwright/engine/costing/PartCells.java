// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.costing;

import static punchwright.engine.costing.Formulas.add;
import static punchwright.engine.costing.Formulas.div;
import static punchwright.engine.costing.Formulas.max;
import static punchwright.engine.costing.Formulas.mul;
import static punchwright.engine.costing.Formulas.num;
import static punchwright.engine.costing.Formulas.percent;
import static punchwright.engine.costing.Formulas.ref;
import static punchwright.engine.costing.Formulas.sum;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Cost of all pieces of one part in the order [money], before it is given to the order's lines.
 *
 * <p>Rule of sharing: sheets by area with web, pieces placed counted (a small part on a shared sheet pays for what it covers);
 * machine time and set-up by the time of the part's own strokes and moves (loading, tool changes and the like follow that share).
 * Programming, first-piece check and secondary work belong to the part alone. Pieces lost raise what is spent on pieces, not
 * set-up.
 */
final class PartCells {

    private PartCells() {
    }

    static String own(CostContext c, int part, String name) {
        return c.own("P" + (part + 1), name);
    }

    static void addInputs(CostContext c, CostPart part, int index) {
        c.under("section.parts", part.label());
        c.input(own(c, index, "placed"), "p.placed", "pcs", part.piecesPlaced(), "src.plan");
        c.input(own(c, index, "mass"), "p.mass", "kg", part.netMassKg(), "src.plan");
        c.input(own(c, index, "area"), "p.area", "mm2", part.areaMm2(), "src.plan");
        c.input(own(c, index, "time"), "p.time", "s", part.timeS(), "src.plan");
        c.shared(CellNames.of(c.word("P", part.id()), "programming_minutes"), c.text("p.programming_minutes"), "min",
                part.programmingMinutes(), "src.rates");
    }

    static void addTo(CostContext c, CostJob job, int index, Expression needed) {
        CostPart part = job.parts().get(index);
        List<String> wear = wearRates(c, job, part);
        c.under("section.parts", part.label());
        String pieces = c.formula(own(c, index, "needed"), "p.needed", "pcs", needed, "src.order");
        if (part.piecesPlaced() > c.value(pieces)) {
            c.report(CostReason.SPARE_PIECES, part.label(), part.piecesPlaced(), c.value(pieces));
        }
        shares(c, job, index);
        running(c, part, index);
        wear(c, job.works().get(part.work()), part, index, wear);
        setUp(c, part, index);
        secondary(c, part, index, ref(pieces));
    }

    private static void shares(CostContext c, CostJob job, int index) {
        String scope = WorkCells.scope(job.parts().get(index).work());
        Expression placed = ref(own(c, index, "placed"));
        String area = c.formula(own(c, index, "area_share"), "p.area_share", "",
                div(mul(placed, ref(own(c, index, "area"))), ref(c.own(scope, "area_sum"))), "src.share");
        boolean timed = c.value(c.own(scope, "time_sum")) > 0;
        c.formula(own(c, index, "time_share"), "p.time_share", "",
                timed ? div(mul(placed, ref(own(c, index, "time"))), ref(c.own(scope, "time_sum"))) : ref(area), "src.share");
    }

    private static void running(CostContext c, CostPart part, int index) {
        String scope = WorkCells.scope(part.work());
        String lost = c.formula(own(c, index, "loss_factor"), "p.loss_factor", "", add(num(1), percent(ref("R_scrap_rate"))),
                "src.own");
        c.formula(own(c, index, "material"), "kind.material", "$",
                mul(ref(c.own(scope, "material")), ref(own(c, index, "area_share")), ref(lost)), "src.share");
        String hours = c.formula(own(c, index, "machine_hours"), "p.machine_hours", "h",
                mul(ref(c.own(scope, "run_hours")), ref(own(c, index, "time_share")), ref(lost)), "src.share");
        c.formula(own(c, index, "machine"), "kind.machine", "$", mul(ref(hours), ref(c.own("H", "rate"))), "src.own");
        c.formula(own(c, index, "labour"), "kind.labour", "$", mul(ref(hours), ref(c.own("H", "labour"))), "src.own");
        c.formula(own(c, index, "consumables"), "kind.consumables", "$", mul(ref(hours), ref("R_consumables")), "src.own");
    }

    private static List<String> wearRates(CostContext c, CostJob job, CostPart part) {
        SheetWork work = job.works().get(part.work());
        List<String> names = new ArrayList<>();
        String material = c.word("Mat", work.materialId());
        for (String id : part.hitsByTool().keySet()) {
            ToolPrice tool = tool(work, part, id);
            names.add(ToolWear.addTo(c, tool, material, CellNames.of(material, "life_factor")));
        }
        return names;
    }

    private static ToolPrice tool(SheetWork work, CostPart part, String id) {
        return work.tools().stream().filter(t -> t.toolId().equals(id)).findFirst().orElseThrow(
                () -> new IllegalArgumentException(part.label() + " is made with tool " + id + ", which has no price record in "
                        + work.label() + "; add it to the tools of that material"));
    }

    private static void wear(CostContext c, SheetWork work, CostPart part, int index, List<String> rates) {
        List<Expression> terms = new ArrayList<>();
        int n = 0;
        for (Map.Entry<String, Integer> hits : part.hitsByTool().entrySet()) {
            String name = c.own("P" + (index + 1), c.word("T", hits.getKey()), "hits");
            c.shared(name, c.text("p.hits", tool(work, part, hits.getKey()).label()), "pcs", hits.getValue(), "src.plan");
            terms.add(mul(ref(name), ref(rates.get(n++))));
        }
        c.formula(own(c, index, "tool_wear"), "kind.tool_wear", "$",
                terms.isEmpty() ? num(0) : mul(sum(terms), ref(own(c, index, "placed")), ref(own(c, index, "loss_factor"))),
                        "src.wear");
    }

    private static void setUp(CostContext c, CostPart part, int index) {
        String scope = WorkCells.scope(part.work());
        Expression share = ref(own(c, index, "time_share"));
        Expression check = div(ref("R_first_piece"), num(60));
        Expression program = ref(CellNames.of(c.word("P", part.id()), "programming_minutes"));
        String programming = c.formula(own(c, index, "programming"), "p.programming", "$", div(mul(div(program, num(60)),
                ref("R_programmer")), max(num(1), ref("R_programming_lots"))), "src.own");
        c.formula(own(c, index, "set_up_labour"), "p.set_up_labour", "$", add(mul(ref(c.own(scope, "set_up_labour")), share),
                ref(programming), mul(check, ref("R_labour"))), "src.share");
        c.formula(own(c, index, "set_up_machine"), "p.set_up_machine", "$",
                add(mul(ref(c.own(scope, "set_up_machine")), share), mul(check, ref(c.own("H", "rate")))), "src.share");
    }

    private static void secondary(CostContext c, CostPart part, int index, Expression pieces) {
        List<Expression> once = new ArrayList<>();
        List<Expression> each = new ArrayList<>();
        for (int i = 0; i < part.secondary().size(); i++) {
            SecondaryOperation op = part.secondary().get(i);
            String word = c.word("W", op.rateId());
            String stem = CellNames.of(c.word("P", part.id()), word, String.valueOf(i + 1));
            c.under("section.rates", c.text("heading.secondary"));
            Expression rate = ref(c.shared(CellNames.of(word, "rate"), c.text("w.rate", op.label()), "$/h", op.perHour(),
                    "src.rates"));
            c.under("section.parts", part.label());
            String set = c.shared(CellNames.of(stem, "set_up"), c.text("w.set_up", op.label()), "min", op.setUpMinutes(),
                    "src.part");
            String run = c.shared(CellNames.of(stem, "each"), c.text("w.each", op.label()), "min", op.minutesPerPiece(),
                    "src.part");
            once.add(mul(div(ref(set), num(60)), rate));
            each.add(mul(div(ref(run), num(60)), rate));
        }
        c.formula(own(c, index, "secondary_once"), "p.secondary_once", "$", sum(once), "src.own");
        c.formula(own(c, index, "secondary_pieces"), "p.secondary_pieces", "$",
                each.isEmpty() ? num(0) : mul(sum(each), pieces, ref(own(c, index, "loss_factor"))), "src.own");
    }
}
