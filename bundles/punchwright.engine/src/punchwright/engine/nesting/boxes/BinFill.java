// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting.boxes;

/**
 * Fills one bin from a list of boxes in order; each goes where the rule says, or is left out. Rules score a place by what
 * stays free beside the box; the least score wins, ties go to the lowest and then leftmost place.
 */
final class BinFill {

    static final int RULES = 5;

    private final BoxSet boxes;
    private final int length;
    private final int width;
    private final Work work;
    private final FreeSpace free = new FreeSpace();
    private int bestTurn;
    private int bestFree;

    BinFill(BoxSet boxes, int length, int width, Work work) {
        this.boxes = boxes;
        this.length = length;
        this.width = width;
        this.work = work;
    }

    /** Fills {@code bin} anew; {@code placed[i]} tells whether {@code order[i]} went in. Returns the number that did. */
    int fill(Bin bin, int[] order, int count, boolean[] placed, int rule) {
        bin.clear();
        free.reset(length, width);
        for (int i = 0; i < count; i++) {
            placed[i] = free.size() > 0 && find(order[i], rule);
            if (placed[i]) {
                int b = order[i];
                bin.put(b, bestTurn, free.x(bestFree), free.y(bestFree));
                free.use(free.x(bestFree), free.y(bestFree), boxes.lengths()[b][bestTurn], boxes.widths()[b][bestTurn]);
            }
        }
        return bin.size();
    }

    private boolean find(int b, int rule) {
        long best = Long.MAX_VALUE;
        int[] lengths = boxes.lengths()[b];
        int[] widths = boxes.widths()[b];
        for (int t = 0; t < lengths.length; t++) {
            for (int i = 0; i < free.size(); i++) {
                int dl = free.length(i) - lengths[t];
                int dw = free.width(i) - widths[t];
                if (dl >= 0 && dw >= 0) {
                    long score = score(rule, i, dl, dw, lengths[t], widths[t]);
                    if (score < best || score == best && lower(i)) {
                        best = score;
                        bestTurn = t;
                        bestFree = i;
                    }
                }
            }
        }
        work.add((long) lengths.length * free.size());
        return best < Long.MAX_VALUE;
    }

    private boolean lower(int i) {
        return free.y(i) < free.y(bestFree) || free.y(i) == free.y(bestFree) && free.x(i) < free.x(bestFree);
    }

    private long score(int rule, int i, int dl, int dw, int l, int w) {
        return switch (rule) {
            case 0 -> Math.min(dl, dw);
            case 1 -> (long) free.length(i) * free.width(i) - (long) l * w;
            case 2 -> free.y(i) + (long) w;
            case 3 -> free.x(i) + (long) l;
            default -> Math.max(dl, dw);
        };
    }
}
