// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

import punchwright.engine.geometry.Line;
import punchwright.engine.geometry.Segment;
import punchwright.engine.nesting.boxes.BinBound;
import punchwright.engine.nesting.boxes.BoxSet;

/**
 * What an order takes at least, whatever the layout: sheet area, and total cost.
 *
 * <p>The best of two: whole sheets that cover the grown parts ({@link MaterialBound}), and, where all parts are rectangles, the
 * number of bins of the largest sheet ({@link BinBound}) times the least sheet. For the cost a sheet counts with its price and
 * handling less the most that any of its area may bring back as remnant or scrap; the area of the parts brings back nothing.
 *
 * @param mm2  sheet area
 * @param cost material less remnants and scrap, plus handling and machine; 0 where nothing better is known
 */
record LowerBounds(double mm2, double cost) {

    private static final int MOST_PIECES = 3_000;

    /** For the pieces that must be made. */
    static LowerBounds of(Stock stock, List<BoxPart> parts) {
        List<BoxPart> must = parts.stream().filter(p -> p.part().want() == Want.MUST).toList();
        if (stock.isEmpty() || must.isEmpty()) {
            return new LowerBounds(0, 0);
        }
        double partMm2 = 0;
        double machine = 0;
        for (BoxPart p : must) {
            partMm2 += p.part().quantity() * p.areaMm2();
            machine += (machine(stock, p) - sharedAtMost(stock, p)) * p.part().quantity();
        }
        int sheets = sheets(stock, must);
        double least = IntStream.range(0, stock.size()).mapToDouble(i -> stock.costs().mostCreditPerMm2(stock.offer(i))).min()
                .orElse(0);
        IntToDoubleFunction net = i -> Math.max(0, stock.offer(i).price() + stock.costs().job().costs().handlingPerSheet()
                - stock.areaMm2(i) * stock.costs().mostCreditPerMm2(stock.offer(i)));
        boolean profit = IntStream.range(0, stock.size()).anyMatch(i -> stock.offer(i).price()
                < stock.areaMm2(i) * stock.costs().mostCreditPerMm2(stock.offer(i)) - 1e-9);
        double cost = profit ? 0 : weight(stock, must, sheets, net) + least * partMm2 + machine;
        return new LowerBounds(weight(stock, must, sheets, stock::areaMm2), cost);
    }

    /** The better of these and what a plan along bars proves: its cost bound, and the area of bars by the linear program. */
    LowerBounds along(BarPlanner.Answer bars, Stock stock, List<BoxPart> parts, int[] must) {
        if (bars == null) {
            return this;
        }
        double machine = 0;
        for (int p = 0; p < must.length; p++) {
            machine += must[p] * (machine(stock, parts.get(p)) - sharedAtMost(stock, parts.get(p)));
        }
        return new LowerBounds(Math.max(mm2, bars.boundMm2()), Math.max(cost, bars.boundCost() + machine));
    }

    /** Machine time for the contours of one piece, money. */
    static double machine(Stock stock, BoxPart part) {
        return stock.costs().job().costs().perMmCut() * part.part().shape().cutLengthMm();
    }

    /** What a piece may save at most where neighbours share its cuts: half of all its straight outer edges. */
    private static double sharedAtMost(Stock stock, BoxPart part) {
        NestingCosts c = stock.costs().job().costs();
        return c.sharedCutMm() <= 0 ? 0 : c.perMmCut() / 2 * part.part().shape().outer().segments().stream()
                .filter(s -> s instanceof Line).mapToDouble(Segment::lengthMm).sum();
    }

    private static double weight(Stock stock, List<BoxPart> must, int sheets, IntToDoubleFunction weights) {
        double grown = must.stream().mapToDouble(p -> p.part().quantity() * MaterialBound.grownPart(p)).sum();
        double least = IntStream.range(0, stock.size()).mapToDouble(weights).min().orElse(0);
        return Math.max(new MaterialBound(stock, must, weights).of(grown), sheets * least);
    }

    /** Least number of sheets, each as long and wide as the longest and widest, for rectangles. */
    private static int sheets(Stock stock, List<BoxPart> must) {
        int pieces = must.stream().mapToInt(p -> p.part().quantity()).sum();
        boolean inStrip = stock.costs().job().margins().clampZone() == ClampZone.NO_HIT;
        if (pieces > MOST_PIECES || inStrip || !must.stream().allMatch(MaterialBound::isRectangle)) {
            return 1;
        }
        int web = Ticks.of(must.stream().mapToDouble(p -> p.part().webMm()).min().orElse(0));
        int length = web + IntStream.range(0, stock.size()).map(i -> stock.region(i).length()).max().orElse(0);
        int width = web + IntStream.range(0, stock.size()).map(i -> stock.region(i).width()).max().orElse(0);
        int[][] lengths = new int[pieces][];
        int[][] widths = new int[pieces][];
        int n = 0;
        for (BoxPart p : must) {
            for (int i = 0; i < p.part().quantity(); i++) {
                lengths[n] = p.turns().stream().mapToInt(t -> t.length() + web).toArray();
                widths[n++] = p.turns().stream().mapToInt(t -> t.width() + web).toArray();
            }
        }
        return Math.max(1, BinBound.of(new BoxSet(lengths, widths), length, width));
    }
}
