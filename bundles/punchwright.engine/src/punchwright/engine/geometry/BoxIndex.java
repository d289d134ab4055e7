// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.geometry;

import java.util.Arrays;
import java.util.List;
import java.util.function.IntConsumer;

/**
 * Finds the boxes that meet a box: a tree packed once, by slices in x and then in y (S. Leutenegger et al., "STR: a simple
 * and efficient algorithm for R-tree packing", ICDE 1997). Numbers come in a fixed order, not sorted.
 */
public final class BoxIndex {

    private static final int FAN = 8;
    /** Centres are sorted on a raster of this many steps over the whole extent; the raster only shapes the tree. */
    private static final double RASTER = Integer.MAX_VALUE - 1.0;

    /** Boxes of each level, four numbers a box, leaves first. */
    private final double[][] levels;
    private final int[] order;

    /** Boxes by position; an empty box is never found. */
    public BoxIndex(List<Bounds> boxes) {
        order = sliced(boxes);
        int n = order.length;
        double[] leaves = new double[4 * n];
        for (int i = 0; i < n; i++) {
            put(leaves, i, boxes.get(order[i]));
        }
        int depth = 1;
        for (int m = n; m > 1; m = (m + FAN - 1) / FAN) {
            depth++;
        }
        levels = new double[depth][];
        levels[0] = leaves;
        for (int i = 1; i < depth; i++) {
            levels[i] = parents(levels[i - 1]);
        }
    }

    private static void put(double[] level, int i, Bounds b) {
        level[4 * i] = b.minX();
        level[4 * i + 1] = b.minY();
        level[4 * i + 2] = b.maxX();
        level[4 * i + 3] = b.maxY();
    }

    private static int[] sliced(List<Bounds> boxes) {
        int n = boxes.size();
        Bounds all = Bounds.EMPTY;
        for (Bounds b : boxes) {
            all = all.including(b);
        }
        long[] keys = new long[n];
        for (int i = 0; i < n; i++) {
            Bounds b = boxes.get(i);
            keys[i] = raster((b.minX() + b.maxX()) / 2, all.minX(), all.width()) << 32 | i;
        }
        Arrays.sort(keys);
        int slices = (int) Math.ceil(Math.sqrt((n + FAN - 1) / FAN));
        int size = slices == 0 ? 1 : (n + slices - 1) / slices;
        for (int k = 0; k < n; k++) {
            Bounds b = boxes.get((int) keys[k]);
            keys[k] = raster((b.minY() + b.maxY()) / 2, all.minY(), all.height()) << 32 | keys[k] & 0xFFFFFFFFL;
        }
        for (int from = 0; from < n; from += size) {
            Arrays.sort(keys, from, Math.min(n, from + size));
        }
        int[] order = new int[n];
        for (int k = 0; k < n; k++) {
            order[k] = (int) keys[k];
        }
        return order;
    }

    private static long raster(double value, double from, double extent) {
        double share = (value - from) / extent;
        return share > 0 ? (long) (Math.min(1, share) * RASTER) : 0;
    }

    private static double[] parents(double[] children) {
        int n = children.length / 4;
        double[] parents = new double[4 * ((n + FAN - 1) / FAN)];
        for (int i = 0; i < n; i++) {
            int c = 4 * i;
            int p = 4 * (i / FAN);
            boolean first = i % FAN == 0;
            parents[p] = first ? children[c] : Math.min(parents[p], children[c]);
            parents[p + 1] = first ? children[c + 1] : Math.min(parents[p + 1], children[c + 1]);
            parents[p + 2] = first ? children[c + 2] : Math.max(parents[p + 2], children[c + 2]);
            parents[p + 3] = first ? children[c + 3] : Math.max(parents[p + 3], children[c + 3]);
        }
        return parents;
    }

    /** Gives the position of every box that meets the query (touching counts). */
    public void query(Bounds query, IntConsumer found) {
        if (order.length > 0) {
            visit(levels.length - 1, 0, levels[levels.length - 1].length / 4, query, found);
        }
    }

    private void visit(int level, int from, int to, Bounds query, IntConsumer found) {
        double[] boxes = levels[level];
        for (int i = from; i < to; i++) {
            if (boxes[4 * i] <= query.maxX() && boxes[4 * i + 2] >= query.minX() && boxes[4 * i + 1] <= query.maxY()
                    && boxes[4 * i + 3] >= query.minY()) {
                if (level == 0) {
                    found.accept(order[i]);
                } else {
                    visit(level - 1, i * FAN, Math.min(levels[level - 1].length / 4, (i + 1) * FAN), query, found);
                }
            }
        }
    }
}
