// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import java.util.EnumSet;
import java.util.List;
import java.util.stream.IntStream;

import punchwright.engine.nesting.boxes.Work;

/**
 * How many pieces of the parts that may be made: all, none, and for each part in turn fewer by halves, by what the whole order
 * costs less the value of the pieces. A plan that makes fewer of the pieces that must be made never wins.
 */
final class MayPieces {

    private record Tried(int[] wanted, List<SpotSheet> sheets, int must, double net) {

        boolean betterThan(Tried other) {
            return must > other.must || must == other.must && net < other.net - 1e-9;
        }
    }

    private final OrderPlanner planner;
    private final Stock stock;
    private final List<BoxPart> parts;
    private final SpotCosts costs;
    private final Work work;

    MayPieces(OrderPlanner planner, Stock stock, List<BoxPart> parts, SpotCosts costs, Work work) {
        this.planner = planner;
        this.stock = stock;
        this.parts = parts;
        this.costs = costs;
        this.work = work;
    }

    /** Sheets with pieces that may be made where they pay, or the given ones that make what must be made. */
    List<SpotSheet> added(int[] must, List<SpotSheet> sheets) {
        List<Integer> may = IntStream.range(0, parts.size()).filter(p -> parts.get(p).part().want() == Want.MAY
                && costs.worth(p) > 0).boxed().toList();
        if (may.isEmpty()) {
            return sheets;
        }
        Tried none = judged(must, sheets);
        int trials = 2 + may.stream().mapToInt(p -> 2 + Integer.numberOfTrailingZeros(
                Integer.highestOneBit(parts.get(p).part().quantity()))).sum();
        long share = Math.max(1, work.left() / trials);
        int[] all = must.clone();
        may.forEach(p -> all[p] = parts.get(p).part().quantity());
        Tried best = better(none, tried(all, share));
        for (int p : may) {
            for (int n = parts.get(p).part().quantity(); n > 0 && !work.spent(); n /= 2) {
                best = better(best, tried(with(best.wanted, p, n), share));
            }
            best = better(best, tried(with(best.wanted, p, 0), share));
        }
        return best.sheets;
    }

    private static int[] with(int[] wanted, int part, int pieces) {
        int[] other = wanted.clone();
        other[part] = pieces;
        return other;
    }

    private static Tried better(Tried a, Tried b) {
        return b != null && b.betterThan(a) ? b : a;
    }

    private Tried tried(int[] wanted, long limit) {
        if (work.spent()) {
            return null;
        }
        Work own = work.own(limit);
        List<SpotSheet> sheets = planner.plan(wanted, own, s -> { });
        work.add(own.done());
        return judged(wanted, sheets);
    }

    /** Room that the sheets leave is used before they are judged. */
    private Tried judged(int[] wanted, List<SpotSheet> planned) {
        List<SpotSheet> sheets = new RoomFiller(stock, parts, costs, EnumSet.of(Want.MAY),
                OrderPlanner.made(planned, parts.size()), work).filled(planned);
        int must = 0;
        int[] made = OrderPlanner.made(sheets, parts.size());
        for (int p = 0; p < made.length; p++) {
            must += parts.get(p).part().want() == Want.MUST ? made[p] : 0;
        }
        return new Tried(wanted, sheets, must, costs.net(sheets));
    }
}
