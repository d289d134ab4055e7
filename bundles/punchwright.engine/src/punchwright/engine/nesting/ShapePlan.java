// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import java.util.Comparator;
import java.util.List;

import punchwright.engine.nesting.shapes.Laid;

/**
 * One complete answer by true shapes, comparable with others.
 *
 * @param sheets     filled sheets with runs
 * @param missingMm2 part area that found no sheet
 * @param cost       of all sheets with handling, less remnants and scrap
 * @param remnants   remnants used
 * @param areaMm2    of all sheets
 * @param reachMm    how far the emptiest sheet is used in x: the shorter, the larger the new remnant
 */
record ShapePlan(List<Filled> sheets, double missingMm2, double cost, int remnants, double areaMm2, double reachMm) {

    /** One offer (by number) with pieces on it, run a number of times. */
    record Filled(int offer, List<Laid> laid, int runs) {

        Filled {
            laid = List.copyOf(laid);
        }

        int[] counts(int kinds) {
            int[] counts = new int[kinds];
            laid.forEach(l -> counts[l.kind()]++);
            return counts;
        }

        double reach(ShapeBook book) {
            return laid.stream().mapToDouble(l -> l.x() + book.piece(l.kind()).maxX(l.turn())).max().orElse(0);
        }
    }

    private static final double CENT = 1e-6;

    /** The better first: least missing, least cost, most remnants used, least area, fewest layouts, shortest last sheet. */
    static final Comparator<ShapePlan> BEST = Comparator.<ShapePlan>comparingLong(p -> Math.round(p.missingMm2))
            .thenComparingLong(p -> Math.round(p.cost / CENT)).thenComparing(p -> -p.remnants)
            .thenComparingLong(p -> Math.round(p.areaMm2)).thenComparingDouble(ShapePlan::reachMm)
            .thenComparingInt(p -> p.sheets.size());

    ShapePlan {
        sheets = List.copyOf(sheets);
    }

    static ShapePlan of(List<Filled> sheets, int[] missing, Stock stock, List<BoxPart> parts, ShapeBook book) {
        double cost = 0;
        double area = 0;
        int remnants = 0;
        double reach = sheets.isEmpty() ? 0 : Double.POSITIVE_INFINITY;
        for (Filled s : sheets) {
            SheetOffer offer = stock.offer(s.offer);
            cost += s.runs * cost(s, stock, parts, book);
            area += s.runs * stock.areaMm2(s.offer);
            remnants += offer.remnant() ? s.runs : 0;
            reach = Math.min(reach, s.reach(book));
        }
        double missingMm2 = 0;
        for (int p = 0; p < missing.length; p++) {
            missingMm2 += missing[p] * parts.get(p).areaMm2();
        }
        return new ShapePlan(sheets, missingMm2, cost, remnants, area, reach);
    }

    /** One run of a sheet. */
    static double cost(Filled s, Stock stock, List<BoxPart> parts, ShapeBook book) {
        Region r = stock.region(s.offer);
        double half = book.webMm() / 2;
        double area = 0;
        double toY = 0;
        for (Laid l : s.laid) {
            area += parts.get(l.kind()).areaMm2();
            toY = Math.max(toY, l.y() + book.piece(l.kind()).maxY(l.turn()));
        }
        return stock.costs().of(stock.offer(s.offer), area, s.reach(book) + r.xMm() - 2 * half, toY + r.yMm() - 2 * half);
    }
}
