// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import java.util.Comparator;
import java.util.List;

/**
 * One complete answer to a job, comparable with others.
 *
 * @param sheets       filled sheets with runs
 * @param missingMm2   part area that found no sheet
 * @param price        of all sheets
 * @param remnants     remnants used
 * @param areaMm2      of all sheets
 * @param lastReachMm  how far the last sheet is used in x: the shorter, the larger the new remnant
 */
record Proposal(List<FilledSheet> sheets, double missingMm2, double price, int remnants, double areaMm2,
        double lastReachMm) {

    private static final double CENT = 1e-6;

    /**
     * The better first: least missing, cheapest, most remnants used, least sheet area, fewest layouts, largest rest on the
     * last sheet.
     */
    static final Comparator<Proposal> BEST = Comparator.<Proposal>comparingLong(p -> Math.round(p.missingMm2))
            .thenComparingLong(p -> Math.round(p.price / CENT)).thenComparing(p -> -p.remnants)
            .thenComparingLong(p -> Math.round(p.areaMm2)).thenComparingInt(p -> p.sheets.size())
            .thenComparingDouble(Proposal::lastReachMm);

    static Proposal of(List<FilledSheet> sheets, int[] missing, Stock stock, List<BoxPart> parts) {
        double price = 0;
        double area = 0;
        int remnants = 0;
        for (FilledSheet s : sheets) {
            SheetOffer offer = stock.offer(s.offer());
            price += s.runs() * offer.price();
            area += s.runs() * offer.lengthMm() * offer.widthMm();
            remnants += offer.remnant() ? s.runs() : 0;
        }
        double missingMm2 = 0;
        for (int p = 0; p < missing.length; p++) {
            missingMm2 += missing[p] * parts.get(p).areaMm2();
        }
        return new Proposal(List.copyOf(sheets), missingMm2, price, remnants, area, reach(sheets, parts));
    }

    /** The same with another missing area. */
    Proposal missing(double mm2) {
        return new Proposal(sheets, mm2, price, remnants, areaMm2, lastReachMm);
    }

    private static double reach(List<FilledSheet> sheets, List<BoxPart> parts) {
        return sheets.isEmpty() ? 0 : sheets.get(sheets.size() - 1).boxes().stream()
                .mapToDouble(b -> Ticks.mm(b.x()) + Ticks.mm(parts.get(b.part()).turns().get(b.turn()).length())).max().orElse(0);
    }
}
