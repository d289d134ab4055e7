// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import java.util.Comparator;
import java.util.List;

/**
 * One complete answer to a job, comparable with others.
 *
 * @param sheets       filled sheets with runs
 * @param missingMm2   part area that found no sheet
 * @param cost         of all sheets, less remnants and scrap
 * @param remnants     remnants used
 * @param areaMm2      of all sheets
 * @param lastReachMm  how far the last sheet is used in x: the shorter, the larger the new remnant
 */
record Proposal(List<FilledSheet> sheets, double missingMm2, double cost, int remnants, double areaMm2,
        double lastReachMm) {

    private static final double CENT = 1e-6;

    /**
     * The better first: least missing, cheapest, most remnants used, least sheet area, fewest layouts, largest rest on the
     * last sheet.
     */
    static final Comparator<Proposal> BEST = Comparator.<Proposal>comparingLong(p -> Math.round(p.missingMm2))
            .thenComparingLong(p -> Math.round(p.cost / CENT)).thenComparing(p -> -p.remnants)
            .thenComparingLong(p -> Math.round(p.areaMm2)).thenComparingInt(p -> p.sheets.size())
            .thenComparingDouble(Proposal::lastReachMm);

    static Proposal of(List<FilledSheet> sheets, int[] missing, Stock stock, List<BoxPart> parts) {
        double cost = 0;
        double area = 0;
        int remnants = 0;
        for (FilledSheet s : sheets) {
            SheetOffer offer = stock.offer(s.offer());
            cost += s.runs() * cost(s, stock, parts);
            area += s.runs() * offer.areaMm2();
            remnants += offer.remnant() ? s.runs() : 0;
        }
        double missingMm2 = 0;
        for (int p = 0; p < missing.length; p++) {
            missingMm2 += missing[p] * parts.get(p).areaMm2();
        }
        return new Proposal(List.copyOf(sheets), missingMm2, cost, remnants, area,
                sheets.isEmpty() ? 0 : sheets.get(sheets.size() - 1).toX(parts) / Ticks.PER_MM);
    }

    /** Of one run of a sheet. */
    static double cost(FilledSheet s, Stock stock, List<BoxPart> parts) {
        SheetOffer offer = stock.offer(s.offer());
        if (!stock.costs().dependOnRest()) {
            return stock.costs().of(offer, 0, 0, 0);
        }
        double partMm2 = 0;
        for (BoxPlacement b : s.boxes()) {
            partMm2 += parts.get(b.part()).areaMm2();
        }
        Region region = stock.region(s.offer());
        return stock.costs().of(offer, partMm2, region.xMm() + s.toX(parts) / Ticks.PER_MM,
                region.yMm() + s.toY(parts) / Ticks.PER_MM);
    }

    /** The same with another missing area. */
    Proposal missing(double mm2) {
        return new Proposal(sheets, mm2, cost, remnants, areaMm2, lastReachMm);
    }
}
