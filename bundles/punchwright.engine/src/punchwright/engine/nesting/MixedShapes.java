// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

import punchwright.engine.nesting.boxes.Work;
import punchwright.engine.nesting.shapes.SheetFill;
import punchwright.engine.nesting.shapes.TurnRule;

/**
 * Several parts by their true outlines over several sheets: every order of the parts, choice of turns and order of the offers
 * gives one plan; then the emptiest sheet and another one are filled anew together, again and again, so that the emptiest
 * empties; whole sheets move to cheaper offers that still take all their pieces.
 */
final class MixedShapes {

    private static final double FILL_SHARE = 0.35;
    private static final double REFILL_SHARE = 0.9;
    private static final int MOST_SHEETS = 60;

    private final Stock stock;
    private final List<BoxPart> parts;
    private final int[] wanted;
    private final ShapeBook book;
    private final Work work;
    private final ShapeFiller filler;
    private final ShapeOrders orders;
    private final SplittableRandom random;

    MixedShapes(Stock stock, List<BoxPart> parts, int[] wanted, ShapeBook book, Work work, long seed) {
        this.stock = stock;
        this.parts = parts;
        this.wanted = wanted;
        this.book = book;
        this.work = work;
        this.filler = new ShapeFiller(stock, new SheetFrame(stock, parts, book), book, work);
        this.orders = new ShapeOrders(stock, parts, book);
        this.random = new SplittableRandom(seed);
    }

    /** The best plan found within the work. */
    ShapePlan plan() {
        ShapePlan best = null;
        List<int[]> offers = orders.offers();
        for (TurnRule rule : TurnRule.values()) {
            for (int[] order : orders.fixed()) {
                for (int[] offer : offers) {
                    if (best == null || !work.spent(FILL_SHARE)) {
                        best = better(best, judge(new ShapeFiller.Recipe(order, rule, offer)));
                    }
                }
            }
        }
        best = cheaper(best);
        if (best.sheets().stream().mapToInt(ShapePlan.Filled::runs).sum() <= MOST_SHEETS) {
            best = better(best, cheaper(refilled(best)));
        }
        return best;
    }

    private static ShapePlan better(ShapePlan a, ShapePlan b) {
        return a == null || ShapePlan.BEST.compare(b, a) < 0 ? b : a;
    }

    private ShapePlan judge(ShapeFiller.Recipe recipe) {
        int[] left = wanted.clone();
        List<ShapePlan.Filled> sheets = filler.all(recipe, left, stock.onHand());
        return ShapePlan.of(sheets, left, stock, parts, book);
    }

    /** The emptiest sheet is filled from together with each other one, as long as that moves area away from it. */
    private ShapePlan refilled(ShapePlan plan) {
        List<ShapePlan.Filled> open = new ArrayList<>();
        for (ShapePlan.Filled f : plan.sheets()) {
            for (int run = 0; run < f.runs(); run++) {
                open.add(new ShapePlan.Filled(f.offer(), f.laid(), 1));
            }
        }
        int[] missing = missing(open);
        while (!work.spent(REFILL_SHARE)) {
            int emptiest = emptiest(open);
            if (open.size() == 1) {
                pressed(open);
                continue;
            }
            int other = random.nextInt(open.size() - 1);
            repack(open, other < emptiest ? other : other + 1, emptiest);
        }
        return ShapePlan.of(merged(open), missing, stock, parts, book);
    }

    private void pressed(List<ShapePlan.Filled> open) {
        ShapePlan.Filled only = open.get(0);
        SheetFill fill = filler.fill(only.offer(), only.counts(parts.size()), orders.disturbed(random, spread()), rule());
        if (fill.size() == only.laid().size() && fill.reach() < only.reach(book) - 1e-6) {
            open.set(0, new ShapePlan.Filled(only.offer(), fill.laid(), 1));
        }
    }

    private void repack(List<ShapePlan.Filled> open, int full, int emptiest) {
        ShapePlan.Filled a = open.get(full);
        ShapePlan.Filled b = open.get(emptiest);
        int[] pool = a.counts(parts.size());
        int[] more = b.counts(parts.size());
        for (int p = 0; p < pool.length; p++) {
            pool[p] += more[p];
        }
        SheetFill first = filler.fill(a.offer(), pool, orders.disturbed(random, spread()), rule());
        double before = area(a);
        if (first.area() < before - 1e-6) {
            return;
        }
        int[] rest = pool.clone();
        first.laid().forEach(l -> rest[l.kind()]--);
        SheetFill second = filler.fill(b.offer(), rest, orders.disturbed(random, 0.1), rule());
        if (first.size() + second.size() < a.laid().size() + b.laid().size()) {
            return;
        }
        if (first.area() > before + 1e-6 || second.reach() < b.reach(book) - 1e-6) {
            open.set(full, new ShapePlan.Filled(a.offer(), first.laid(), 1));
            open.set(emptiest, new ShapePlan.Filled(b.offer(), second.laid(), 1));
            if (second.size() == 0) {
                open.remove(emptiest);
            }
        }
    }

    private double spread() {
        return random.nextInt(3) == 0 ? 1.2 : 0.4;
    }

    private TurnRule rule() {
        return TurnRule.values()[random.nextInt(TurnRule.values().length)];
    }

    private double area(ShapePlan.Filled f) {
        return f.laid().stream().mapToDouble(l -> book.piece(l.kind()).area()).sum();
    }

    /** The sheet with the least pieces for its price. */
    private int emptiest(List<ShapePlan.Filled> open) {
        int best = 0;
        for (int i = 1; i < open.size(); i++) {
            if (area(open.get(i)) * stock.offer(open.get(best).offer()).price()
                    < area(open.get(best)) * stock.offer(open.get(i).offer()).price()) {
                best = i;
            }
        }
        return best;
    }

    private int[] missing(List<ShapePlan.Filled> open) {
        int[] missing = wanted.clone();
        for (ShapePlan.Filled f : open) {
            f.laid().forEach(l -> missing[l.kind()] -= f.runs());
        }
        return missing;
    }

    private static List<ShapePlan.Filled> merged(List<ShapePlan.Filled> open) {
        List<ShapePlan.Filled> out = new ArrayList<>();
        for (ShapePlan.Filled f : open) {
            int at = 0;
            while (at < out.size() && !(out.get(at).offer() == f.offer() && out.get(at).laid().equals(f.laid()))) {
                at++;
            }
            if (at < out.size()) {
                out.set(at, new ShapePlan.Filled(f.offer(), f.laid(), out.get(at).runs() + f.runs()));
            } else {
                out.add(f);
            }
        }
        return out;
    }

    /** Moves whole layouts to sheets that still take all their pieces and cost less with what they leave. */
    private ShapePlan cheaper(ShapePlan plan) {
        List<ShapePlan.Filled> sheets = new ArrayList<>(plan.sheets());
        int[] onHand = stock.onHand();
        sheets.forEach(s -> onHand[s.offer()] -= s.runs());
        for (int i = sheets.size() - 1; i >= 0 && !work.spent(0.95); i--) {
            ShapePlan.Filled now = sheets.get(i);
            ShapePlan.Filled less = cheaper(now, onHand);
            onHand[now.offer()] += now.runs();
            onHand[less.offer()] -= less.runs();
            sheets.set(i, less);
        }
        return ShapePlan.of(sheets, missing(sheets), stock, parts, book);
    }

    private ShapePlan.Filled cheaper(ShapePlan.Filled sheet, int[] onHand) {
        int[] counts = sheet.counts(parts.size());
        ShapePlan.Filled best = sheet;
        double least = ShapePlan.cost(sheet, stock, parts, book);
        for (int offer = 0; offer < stock.size(); offer++) {
            boolean other = offer != sheet.offer() && onHand[offer] >= sheet.runs();
            if (other && area(sheet) <= new SheetFrame(stock, parts, book).room(offer)) {
                for (int[] order : orders.fixed()) {
                    SheetFill fill = filler.fill(offer, counts, order, TurnRule.RIGHT_END);
                    ShapePlan.Filled moved = new ShapePlan.Filled(offer, fill.laid(), sheet.runs());
                    double cost = ShapePlan.cost(moved, stock, parts, book);
                    if (fill.size() == Arrays.stream(counts).sum() && cost < least - 1e-9) {
                        best = moved;
                        least = cost;
                    }
                }
            }
        }
        return best;
    }
}
