// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.costing;

import static punchwright.engine.costing.Formulas.add;
import static punchwright.engine.costing.Formulas.div;
import static punchwright.engine.costing.Formulas.mul;
import static punchwright.engine.costing.Formulas.num;
import static punchwright.engine.costing.Formulas.percent;
import static punchwright.engine.costing.Formulas.ref;
import static punchwright.engine.costing.Formulas.round;
import static punchwright.engine.costing.Formulas.sum;
import static punchwright.engine.costing.Formulas.sumOf;

import java.util.ArrayList;
import java.util.List;

/**
 * Cost of one order line [money]: by kind for the lot (rounded to the cent) and for a piece (rounded to a hundredth of a
 * cent); every total is the sum of the rounded parts. A part that several lines need is shared among them by pieces.
 */
final class LineCells {

    private final CostContext c;
    private final CostJob job;
    private final CostLine line;
    private final int number;
    private final String scope;

    LineCells(CostContext c, CostJob job, int index) {
        this.c = c;
        this.job = job;
        this.line = job.lines().get(index);
        this.number = index + 1;
        this.scope = "L" + number;
    }

    static String quantity(int line) {
        return "L" + line + "_quantity";
    }

    /** Pieces and needs; the same for every machine, so without a code. */
    void addInputs() {
        under();
        c.shared(quantity(number), c.text("l.quantity"), "pcs", line.quantity(), "src.order");
        for (CostLine.Need need : line.needs()) {
            c.shared(needCell(need.partId()), c.text("l.need", label(need.partId())), "pcs", need.pieces(), "src.order");
        }
        for (CostLine.Purchase bought : line.purchases()) {
            String stem = purchaseStem(bought);
            c.shared(stem + "_price", c.text("l.purchase_price", bought.label()), "$", bought.price(), "src.item");
            c.shared(stem + "_pieces", c.text("l.purchase_pieces", bought.label()), "pcs", bought.pieces(), "src.order");
        }
        c.shared(CellNames.of(scope, "joining_minutes"), c.text("l.joining_minutes"), "min", line.joiningMinutes(), "src.item");
    }

    /** Pieces of a part that this line needs, as a formula; null when it needs none. */
    Expression pieces(String partId) {
        return line.needs().stream().anyMatch(n -> n.partId().equals(partId))
                ? mul(ref(quantity(number)), ref(needCell(partId))) : null;
    }

    void addResults() {
        under();
        shares();
        direct();
        c.formula(raw("direct_labour"), "l.direct_labour", "$", sum(List.of(fromParts("labour"), fromParts("set_up_labour"),
                joining())), "src.own");
        SurchargeCalculation.addTo(c, scope, add(ref(lot(CostKind.MATERIAL)), ref(lot(CostKind.PURCHASED))),
                ref(raw("direct_labour")), CostKind.direct().stream().map(this::lot).toList(), lot(CostKind.OVERHEADS));
        totals(CostKind::lotCell, 2);
        perPiece();
        lots();
    }

    private void direct() {
        kind(CostKind.MATERIAL, fromParts("material"));
        kind(CostKind.PURCHASED, mul(ref(quantity(number)), sum(line.purchases().stream().map(b -> mul(
                ref(purchaseStem(b) + "_price"), ref(purchaseStem(b) + "_pieces"))).toList())));
        kind(CostKind.MACHINE, fromParts("machine"));
        kind(CostKind.LABOUR, fromParts("labour"));
        kind(CostKind.SET_UP, add(fromParts("set_up_labour"), fromParts("set_up_machine")));
        kind(CostKind.TOOL_WEAR, fromParts("tool_wear"));
        kind(CostKind.CONSUMABLES, fromParts("consumables"));
        kind(CostKind.SECONDARY, sum(List.of(fromParts("secondary_once"), fromParts("secondary_pieces"), joining())));
    }

    private void kind(CostKind kind, Expression value) {
        c.formula(lot(kind), "kind." + kind.word(), "$", round(value, 2), "src.round");
    }

    private void shares() {
        for (CostLine.Need need : line.needs()) {
            int part = index(need.partId());
            c.formulaLabelled(shareCell(part), c.text("l.share", label(need.partId())), "",
                    div(pieces(need.partId()), ref(PartCells.own(c, part, "needed"))), "src.pieces");
        }
    }

    private Expression fromParts(String kind) {
        return sum(line.needs().stream().map(n -> mul(ref(PartCells.own(c, index(n.partId()), kind)),
                ref(shareCell(index(n.partId()))))).toList());
    }

    private Expression joining() {
        return mul(ref(quantity(number)), div(ref(CellNames.of(scope, "joining_minutes")), num(60)), ref("R_labour"));
    }

    /** Total, profit and price, of the lot or of a piece. */
    private void totals(KindName name, int decimals) {
        String code = c.code();
        c.formula(name.of(CostKind.TOTAL, code, number), "kind.total", "$",
                sumOf(CostKind.parts().stream().map(k -> name.of(k, code, number)).toList()), "src.sum");
        c.formula(name.of(CostKind.PROFIT, code, number), "kind.profit", "$",
                round(mul(ref(name.of(CostKind.TOTAL, code, number)), percent(ref("R_profit"))), decimals),
                        "src.surcharge");
        c.formula(name.of(CostKind.PRICE, code, number), "kind.price", "$",
                add(ref(name.of(CostKind.TOTAL, code, number)), ref(name.of(CostKind.PROFIT, code, number))), "src.sum");
    }

    private void perPiece() {
        c.under("section.lines", c.text("heading.piece", number, line.label()));
        for (CostKind kind : CostKind.parts()) {
            c.formula(kind.pieceCell(c.code(), number), "kind." + kind.word(), "$",
                    round(div(ref(lot(kind)), ref(quantity(number))), 4), "src.round");
        }
        totals(CostKind::pieceCell, 4);
    }

    /** Cost against quantity: what is spent once for a lot, and what every piece adds. */
    private void lots() {
        c.under("section.lines", c.text("heading.lots", number, line.label()));
        String once = c.formula(raw("lot_once"), "l.lot_once", "$", mul(sum(List.of(mul(fromParts("set_up_labour"),
                add(num(1), percent(ref("R_production_overhead")))), fromParts("set_up_machine"), fromParts("secondary_once"))),
                sum(List.of(num(1), percent(ref("R_admin_overhead")), percent(ref("R_sales_overhead"))))), "src.lot");
        String each = c.formula(raw("lot_each"), "l.lot_each", "$",
                div(Formulas.sub(ref(lot(CostKind.TOTAL)), ref(once)), ref(quantity(number))), "src.lot");
        List<Integer> sizes = new ArrayList<>(line.lots());
        for (int i = 0; i < sizes.size(); i++) {
            String lot = "lot" + (i + 1);
            String size = c.shared(CellNames.of(scope, lot, "size"), c.text("l.lot_size", i + 1), "pcs", sizes.get(i),
                    "src.order");
            String total = c.formulaLabelled(c.own("M", scope, lot, "total"), c.text("l.lot_total", i + 1), "$",
                    round(add(ref(once), mul(ref(size), ref(each))), 2), "src.lot");
            c.formulaLabelled(c.own("M", scope, lot, "piece"), c.text("l.lot_piece", i + 1), "$",
                    round(div(ref(total), ref(size)), 4), "src.lot");
        }
    }

    private void under() {
        c.under("section.lines", c.text("heading.line", number, line.label()));
    }

    private String lot(CostKind kind) {
        return kind.lotCell(c.code(), number);
    }

    private String raw(String name) {
        return c.own(scope, name);
    }

    private String needCell(String partId) {
        return CellNames.of(scope, c.word("P", partId), "each");
    }

    private String shareCell(int part) {
        return c.own(scope, "P" + (part + 1), "share");
    }

    private String purchaseStem(CostLine.Purchase bought) {
        return CellNames.of(scope, c.word("B", bought.id()));
    }

    private String label(String partId) {
        return job.parts().get(index(partId)).label();
    }

    private int index(String partId) {
        for (int i = 0; i < job.parts().size(); i++) {
            if (job.parts().get(i).id().equals(partId)) {
                return i;
            }
        }
        throw new IllegalArgumentException("order line " + line.label() + " needs part " + partId
                + ", which is not among the parts of the cost job; add it");
    }

    private interface KindName {
        String of(CostKind kind, String code, int line);
    }
}
