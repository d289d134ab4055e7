// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.layout;

import java.util.ArrayList;
import java.util.List;

import punchwright.engine.nesting.LayoutFigures;
import punchwright.engine.nesting.Nesting;
import punchwright.engine.planning.SheetLayouts;
import punchwright.model.work.Part;

/**
 * All layouts of one material and thickness.
 *
 * @param name    material and thickness
 * @param sheets  sheets used
 * @param figures use, cost, bound of all of them; the bound is for everything ordered
 * @param whole   whether they make everything that must be made, so that the bound can be compared
 */
public record Totals(String name, int sheets, Nesting figures, boolean whole) {

    /** How far the sheet area is above its bound, per cent; null while something is missing or there is no bound. */
    Double gapPercent() {
        return whole && figures.boundMm2() > 0 ? 100 * figures.areaGap() : null;
    }

    /** How far the cost is above its bound, per cent; null while something is missing or there is no bound. */
    Double costGapPercent() {
        return whole && figures.boundCost() > 0 ? 100 * figures.costGap() : null;
    }

    /** The totals of layouts, by material and thickness in their order. */
    static List<Totals> of(BenchRows bench, List<PartNeed> needs) {
        List<Totals> all = new ArrayList<>();
        for (SheetLayouts s : bench.context().map(c -> c.sheets()).orElse(List.of())) {
            List<BenchRow> rows = bench.rows().stream().filter(r -> r.sheet() != null)
                    .filter(r -> bench.sheets(r.kept()).filter(x -> x == s).isPresent()).toList();
            if (!rows.isEmpty()) {
                Nesting figures = LayoutFigures.of(rows.getFirst().sheet().job(), rows.stream()
                        .map(r -> r.sheet().orderedOnly()).toList());
                all.add(new Totals(rows.getFirst().material(), rows.stream().mapToInt(r -> r.sheet().runs()).sum(), figures,
                        needs.stream().filter(n -> isOf(n.part(), s)).allMatch(n -> n.missing() == 0)));
            }
        }
        return all;
    }

    private static boolean isOf(Part part, SheetLayouts s) {
        return part.getMaterial() != null && s.material().id().equals(part.getMaterial().getId())
                && Math.abs(part.getThicknessMm() - s.thicknessMm()) < 1e-6;
    }
}
