// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import punchwright.engine.nesting.boxes.FreeSpace;
import punchwright.engine.nesting.boxes.Work;
import java.util.ArrayList;
import java.util.List;

/** Fills one region with boxes of several parts: parts in a given order, each box by the fit rule. */
final class BoxFiller {

    private final List<BoxPart> parts;
    private final int web;
    private final Work work;

    BoxFiller(List<BoxPart> parts, Work work) {
        this.parts = parts;
        this.web = Ticks.of(parts.stream().mapToDouble(p -> p.part().webMm()).max().orElse(0));
        this.work = work;
    }

    /** At most {@code wanted[part]} boxes of each part on an offer, one in its clamp strip where it may lie there. */
    List<BoxPlacement> fill(Stock stock, int offer, int[] wanted, int[] order, FitRule rule) {
        Region region = stock.region(offer);
        FreeSpace free = new FreeSpace().reset(region.length() + web, region.width() + web);
        for (int part : order) {
            BoxPlacement seat = wanted[part] > 0 ? stock.seat(offer, parts.get(part), part) : null;
            if (seat != null) {
                Turn turn = parts.get(part).turns().get(seat.turn());
                free.use(seat.x(), seat.y(), turn.length() + web, turn.width() + web);
                int[] others = wanted.clone();
                others[part]--;
                List<BoxPlacement> out = new ArrayList<>(List.of(seat));
                out.addAll(fill(free, region.row(), others, order, rule));
                return out;
            }
        }
        return region.length() > 0 && region.width() > 0 ? fill(free, region.row(), wanted, order, rule) : List.of();
    }

    /**
     * The same in free rectangles, each a web longer and wider than the room in it; they are used up.
     *
     * @param row whether each box takes the full width of its rectangle
     */
    List<BoxPlacement> fill(FreeSpace free, boolean row, int[] wanted, int[] order, FitRule rule) {
        List<BoxPlacement> out = new ArrayList<>();
        for (int part : order) {
            int left = wanted[part];
            while (left > 0 && put(part, free, row, rule, out)) {
                left--;
            }
        }
        return out;
    }

    /** The largest web of the parts, in ticks. */
    int web() {
        return web;
    }

    private boolean put(int part, FreeSpace free, boolean row, FitRule rule, List<BoxPlacement> out) {
        List<Turn> turns = parts.get(part).turns();
        int bestTurn = -1;
        int bestFree = -1;
        long bestScore = Long.MAX_VALUE;
        for (int t = 0; t < turns.size(); t++) {
            int length = turns.get(t).length() + web;
            int width = turns.get(t).width() + web;
            for (int i = 0; i < free.size(); i++) {
                if (length <= free.length(i) && width <= free.width(i)) {
                    long score = rule.score(free, i, length, width);
                    if (score < bestScore || score == bestScore && before(free, i, bestFree)) {
                        bestScore = score;
                        bestTurn = t;
                        bestFree = i;
                    }
                }
            }
        }
        work.add((long) turns.size() * free.size());
        if (bestTurn < 0) {
            return false;
        }
        int x = free.x(bestFree);
        int y = free.y(bestFree);
        out.add(new BoxPlacement(part, bestTurn, x, y));
        free.use(x, y, turns.get(bestTurn).length() + web, row ? free.width(bestFree) : turns.get(bestTurn).width() + web);
        return true;
    }

    private static boolean before(FreeSpace free, int a, int b) {
        return free.x(a) < free.x(b) || free.x(a) == free.x(b) && free.y(a) < free.y(b);
    }
}
