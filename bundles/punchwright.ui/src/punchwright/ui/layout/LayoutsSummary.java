// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.layout;

import java.util.List;
import java.util.Locale;

import punchwright.engine.finding.Finding;
import punchwright.engine.nesting.Nesting;
import punchwright.ui.text.Numbers;
import punchwright.ui.text.Texts;

/** Figures in words: all layouts in one line, the sheet that is shown, also while a piece is in the hand, in the next. */
final class LayoutsSummary {

    private LayoutsSummary() {
    }

    static String of(BenchRows rows, SheetBench bench, List<PartNeed> needs, List<Totals> totals, String currency) {
        return all(rows, needs, totals, currency) + "\n" + sheet(bench, currency);
    }

    private static String all(BenchRows rows, List<PartNeed> needs, List<Totals> totals, String currency) {
        if (rows.context().isEmpty()) {
            return Texts.of("layouts.reading");
        }
        if (!LayoutsPage.canLayOut(rows.context().get())) {
            return rows.context().get().findings().stream().filter(Finding::isError).findFirst()
                    .map(f -> f.message(Locale.getDefault()) + " " + f.remedy(Locale.getDefault())).orElse("");
        }
        if (rows.rows().isEmpty()) {
            return Texts.of("layouts.none");
        }
        double cost = totals.stream().mapToDouble(t -> t.figures().cost().total()).sum();
        double area = totals.stream().mapToDouble(t -> t.figures().sheetMm2()).sum();
        double used = totals.stream().mapToDouble(t -> t.figures().utilisation() * t.figures().sheetMm2()).sum();
        int missing = needs.stream().mapToInt(PartNeed::missing).sum();
        int wrong = (int) rows.rows().stream().filter(r -> r.sheet() == null || !r.problems().isEmpty()).count();
        return Texts.of("layouts.all", rows.rows().size(), totals.stream().mapToInt(Totals::sheets).sum(),
                Numbers.fixed(area > 0 ? 100 * used / area : 0, 1), Numbers.fixed(cost, 2), currency) + " "
                + Texts.of("layouts.allMissing", missing) + " " + Texts.of("layouts.allWrong", wrong);
    }

    private static String sheet(SheetBench bench, String currency) {
        if (bench.sheet() == null) {
            return bench.row() == null ? "" : Texts.of("layouts.noStockHelp");
        }
        Nesting f = bench.figures();
        String check = bench.problems().isEmpty() ? Texts.of(bench.hasInHand() ? "layouts.fits" : "layouts.right")
                : Texts.of("layouts.wrongOnes", bench.problems().size(), ProblemWords.pieces(bench.problems().getFirst()),
                        ProblemWords.brief(bench.problems().getFirst()));
        return Texts.of("layouts.sheet", bench.row().number(), Numbers.fixed(100 * f.utilisation(), 1),
                Numbers.fixed(f.cost().material(), 2), Numbers.fixed(f.cost().remnants(), 2), Numbers.fixed(f.cost().total(), 2),
                currency) + " " + check;
    }
}
