// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import java.util.ArrayList;
import java.util.List;

import punchwright.engine.nesting.boxes.Work;
import punchwright.engine.nesting.shapes.Laid;
import punchwright.engine.nesting.shapes.SheetFill;
import punchwright.engine.nesting.shapes.Stamps;
import punchwright.engine.nesting.shapes.TurnRule;

/** Fills sheets with pieces by their true outlines, in a given order of the parts. */
final class ShapeFiller {

    /** Squares along the longest and across the widest sheet. */
    private static final double ALONG = 500;
    private static final double ACROSS = 256;

    /** A way to fill: order of the parts, which turn is taken, order of the offers. */
    record Recipe(int[] order, TurnRule rule, int[] offers) {
    }

    private final Stock stock;
    private final SheetFrame frame;
    private final Stamps stamps;
    private final Work work;

    ShapeFiller(Stock stock, SheetFrame frame, ShapeBook book, Work work) {
        this.stock = stock;
        this.frame = frame;
        this.work = work;
        double cell = 0;
        for (int i = 0; i < stock.size(); i++) {
            cell = Math.max(cell, Math.max(frame.length(i) / ALONG, frame.width(i) / ACROSS));
        }
        this.stamps = new Stamps(book.pieces(), cell);
    }

    /** One sheet with at most {@code wanted[part]} pieces of each part; the array stays as it is. */
    SheetFill fill(int offer, int[] wanted, int[] order, TurnRule rule) {
        return fill(offer, List.of(), wanted, order, rule);
    }

    /** The same on a sheet on which some pieces lie already. */
    SheetFill fill(int offer, List<Laid> kept, int[] wanted, int[] order, TurnRule rule) {
        SheetFill sheet = new SheetFill(stamps, frame.length(offer), frame.width(offer), work);
        kept.forEach(sheet::keep);
        for (int part : order) {
            int left = wanted[part];
            while (left > 0 && sheet.put(part, rule)) {
                left--;
            }
        }
        return sheet;
    }

    /** Sheet after sheet until nothing is left, no offer is left or no piece fits; takes what is placed off both arrays. */
    List<ShapePlan.Filled> all(Recipe recipe, int[] left, int[] onHand) {
        List<ShapePlan.Filled> sheets = new ArrayList<>();
        for (int offer : recipe.offers) {
            boolean going = true;
            while (going && onHand[offer] > 0 && any(left)) {
                SheetFill filled = fill(offer, left, recipe.order, recipe.rule);
                going = filled.size() > 0;
                if (going) {
                    sheets.add(use(new ShapePlan.Filled(offer, filled.laid(), 1), left, onHand));
                }
            }
        }
        return sheets;
    }

    /** Runs a filled sheet as often as quantities and stock allow. */
    ShapePlan.Filled use(ShapePlan.Filled sheet, int[] left, int[] onHand) {
        int[] counts = sheet.counts(left.length);
        int runs = onHand[sheet.offer()];
        for (int p = 0; p < counts.length; p++) {
            runs = counts[p] > 0 ? Math.min(runs, left[p] / counts[p]) : runs;
        }
        for (int p = 0; p < counts.length; p++) {
            left[p] -= runs * counts[p];
        }
        onHand[sheet.offer()] -= runs;
        return new ShapePlan.Filled(sheet.offer(), sheet.laid(), runs);
    }

    private static boolean any(int[] left) {
        for (int n : left) {
            if (n > 0) {
                return true;
            }
        }
        return false;
    }

    int offers() {
        return stock.size();
    }
}
