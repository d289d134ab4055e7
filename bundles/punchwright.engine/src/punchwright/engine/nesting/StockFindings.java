// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import punchwright.engine.nesting.boxes.Work;
import java.util.ArrayList;
import java.util.List;

import punchwright.engine.finding.Finding;

/** Findings about what the stock cannot give. */
final class StockFindings {

    private final Stock stock;
    private final List<BoxPart> parts;
    private final NestingJob job;

    StockFindings(Stock stock, List<BoxPart> parts, NestingJob job) {
        this.stock = stock;
        this.parts = parts;
        this.job = job;
    }

    /** A part that fits no sheet: its box at the angle that comes closest, the largest room, and the sheet it would need. */
    static Finding tooLarge(BoxPart part, Stock stock, NestingJob job) {
        Turn turn = part.turns().get(0);
        Region room = stock.region(0);
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < stock.size(); i++) {
            for (Turn t : part.turns()) {
                double excess = Math.max(0.0, t.length() - stock.region(i).length())
                        + Math.max(0.0, t.width() - stock.region(i).width());
                if (excess < least) {
                    least = excess;
                    turn = t;
                    room = stock.region(i);
                }
            }
        }
        double length = Ticks.mm(turn.length());
        double width = Ticks.mm(turn.width());
        return Finding.of(part.part().want() == Want.MUST ? NestingReason.PART_TOO_LARGE : NestingReason.OPTIONAL_TOO_LARGE,
                "part " + part.part().id(), part.part().id(), length, width,
                Ticks.mm(room.length()), Ticks.mm(room.width()), length + 2 * job.margins().edgeMm(),
                width + job.margins().edgeMm() + job.margins().belowMm());
    }

    /** One finding for each part with missing pieces; the sheets to order are counted for all of them together. */
    List<Finding> shortages(int[] missing) {
        List<Finding> out = new ArrayList<>();
        int[] left = missing.clone();
        int open = pieces(left);
        while (open > 0) {
            int[] after = left;
            int offer = -1;
            int sheets = 0;
            for (int i = 0; i < stock.size(); i++) {
                int[] rest = left.clone();
                int n = sheetsFor(i, rest);
                boolean better = offer < 0 || pieces(rest) < pieces(after)
                        || pieces(rest) == pieces(after) && n * stock.offer(i).price() < sheets * stock.offer(offer).price();
                if (n > 0 && better) {
                    offer = i;
                    after = rest;
                    sheets = n;
                }
            }
            report(left, after, missing, stock.offer(offer), sheets, out);
            left = after;
            open = pieces(left);
        }
        return out;
    }

    private void report(int[] before, int[] after, int[] missing, SheetOffer offer, int sheets, List<Finding> out) {
        for (int p = 0; p < before.length; p++) {
            if (before[p] > after[p]) {
                NestPart part = parts.get(p).part();
                out.add(Finding.of(NestingReason.STOCK_SHORT, "part " + part.id(), missing[p], part.quantity(), part.id(),
                        sheets, offer.id(), offer.lengthMm(), offer.widthMm()));
            }
        }
    }

    private static int pieces(int[] counts) {
        return java.util.Arrays.stream(counts).sum();
    }

    /** Sheets of one offer for the pieces that fit it; takes them off {@code left}. */
    private int sheetsFor(int offer, int[] left) {
        BoxFiller filler = new BoxFiller(parts, new Work(Long.MAX_VALUE));
        int[] order = java.util.stream.IntStream.range(0, left.length).boxed()
                .sorted(java.util.Comparator.comparingLong(p -> -parts.get(p).boxArea())).mapToInt(p -> p).toArray();
        int sheets = 0;
        List<BoxPlacement> boxes = filler.fill(stock, offer, left, order, FitRule.SHORT_SIDE);
        while (!boxes.isEmpty()) {
            int[] counts = new FilledSheet(offer, boxes, 1).counts(left.length);
            int runs = Integer.MAX_VALUE;
            for (int p = 0; p < left.length; p++) {
                runs = counts[p] > 0 ? Math.min(runs, left[p] / counts[p]) : runs;
            }
            for (int p = 0; p < left.length; p++) {
                left[p] -= runs * counts[p];
            }
            sheets += runs;
            boxes = filler.fill(stock, offer, left, order, FitRule.SHORT_SIDE);
        }
        return sheets;
    }
}
