// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.costing;

import static punchwright.engine.costing.Formulas.ref;
import static punchwright.engine.costing.Formulas.sum;
import static punchwright.engine.costing.Formulas.sumOf;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What an order costs on a machine: the entry point of this package.
 *
 * <p>Result cells (code before them where the job has one): {@code M_L1_material_lot} and {@code M_L1_material_piece} for
 * each line and {@link CostKind}, {@code M_order_material} for the order, {@code M_L1_lot2_piece} for the second of the other
 * lots, {@code H_rate} for the machine-hour rate. Totals are the sums of their rounded parts: over kinds and over lines.
 * Errors: {@link IllegalArgumentException} for a job that contradicts itself; doubtful inputs give findings instead. Sources:
 * {@link MachineHourRate}, {@link SurchargeCalculation}, {@link MaterialCost}, {@link ToolWear}.
 */
public final class OrderCost {

    private OrderCost() {
    }

    public static CostSheet calculate(CostJob job) {
        CostJobCheck.check(job);
        CostSheetBuilder builder = new CostSheetBuilder(job.title(), job.currency());
        CostContext c = new CostContext(builder, job.code(), job.locale());
        List<LineCells> lines = IntStream.range(0, job.lines().size()).mapToObj(i -> new LineCells(c, job, i)).toList();
        rates(c, job);
        lines.forEach(LineCells::addInputs);
        for (int work = 0; work < job.works().size(); work++) {
            WorkCells.addTo(c, job, work);
        }
        for (int part = 0; part < job.parts().size(); part++) {
            PartCells.addTo(c, job, part, needed(job, part, lines));
        }
        lines.forEach(LineCells::addResults);
        order(c, job);
        return builder.build();
    }

    private static void rates(CostContext c, CostJob job) {
        ShopRates r = job.rates();
        LabourRate.addShared(c, r);
        SurchargeCalculation.addRates(c, r.materialSurchargePercent(), r.productionSurchargePercent(), r.adminSurchargePercent(),
                r.salesSurchargePercent(), r.profitPercent());
        MachineHourRate.addTo(c, job.machine());
        LabourRate.addAttendance(c, job.machine());
    }

    private static Expression needed(CostJob job, int part, List<LineCells> lines) {
        String id = job.parts().get(part).id();
        List<Expression> terms = lines.stream().map(l -> l.pieces(id)).filter(Objects::nonNull).toList();
        if (terms.isEmpty()) {
            throw new IllegalArgumentException(
                    "part " + job.parts().get(part).label() + " belongs to no line of the order; leave it out of the cost job");
        }
        return sum(terms);
    }

    private static void order(CostContext c, CostJob job) {
        c.under("section.order", c.text("heading.order"));
        Stream.concat(CostKind.parts().stream(), Stream.of(CostKind.PROFIT)).forEach(kind -> overLines(c, job, kind));
        c.formula(CostKind.TOTAL.orderCell(c.code()), "kind.total", "$",
                sumOf(CostKind.parts().stream().map(k -> k.orderCell(c.code())).toList()), "src.sum");
        c.formula(CostKind.PRICE.orderCell(c.code()), "kind.price", "$", Formulas.add(ref(CostKind.TOTAL.orderCell(c.code())),
                ref(CostKind.PROFIT.orderCell(c.code()))), "src.sum");
        List<String> hours = IntStream.range(0, job.works().size()).mapToObj(w -> c.own(WorkCells.scope(w),
                "run_hours")).toList();
        c.formula(c.own("M", "order", "run_hours"), "m.run_hours", "h", sumOf(hours), "src.sum");
    }

    /**
     * Sum over the lines, with subtotals of fifty lines where there are more, as a spreadsheet's formula must not grow too
     * long.
     */
    private static void overLines(CostContext c, CostJob job, CostKind kind) {
        List<String> names = IntStream.rangeClosed(1, job.lines().size()).mapToObj(l -> kind.lotCell(c.code(), l)).toList();
        int step = 50;
        if (names.size() > step) {
            List<String> subtotals = new ArrayList<>();
            for (int from = 0; from < names.size(); from += step) {
                List<String> some = names.subList(from, Math.min(names.size(), from + step));
                subtotals.add(c.formula(kind.orderCell(c.code()) + "_" + (subtotals.size() + 1), "kind." + kind.word(), "$",
                        sumOf(some), "src.sum"));
            }
            names = subtotals;
        }
        c.formula(kind.orderCell(c.code()), "kind." + kind.word(), "$", sumOf(names), "src.sum");
    }
}
