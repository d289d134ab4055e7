// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.geometry;

import java.util.Arrays;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;

/**
 * Finds the boxes that meet a box: a tree packed once, by slices in x and then in y (S. Leutenegger et al., "STR: a simple
 * and efficient algorithm for R-tree packing", ICDE 1997). Numbers come in a fixed order, not sorted.
 */
public final class BoxIndex {

    private static final int BITS = 3;
    private static final int FAN = 1 << BITS;
    /** Centres are sorted on a raster of this many steps over the whole extent; the raster only shapes the tree. */
    private static final double RASTER = Integer.MAX_VALUE - 1.0;

    /** Boxes of each level, four numbers a box, leaves first. */
    private final double[][] levels;
    private final int[] order;

    /** Boxes by position; an empty box is never found. */
    public BoxIndex(List<Bounds> boxes) {
        double[] flat = new double[4 * boxes.size()];
        for (int i = 0; i < boxes.size(); i++) {
            put(flat, i, boxes.get(i));
        }
        order = sliced(flat);
        int n = order.length;
        double[] leaves = new double[4 * n];
        for (int i = 0; i < n; i++) {
            System.arraycopy(flat, 4 * order[i], leaves, 4 * i, 4);
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

    private static Bounds around(double[] boxes) {
        double minX = Double.POSITIVE_INFINITY;
        double minY = Double.POSITIVE_INFINITY;
        double maxX = Double.NEGATIVE_INFINITY;
        double maxY = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < boxes.length; i += 4) {
            minX = Math.min(minX, boxes[i]);
            minY = Math.min(minY, boxes[i + 1]);
            maxX = Math.max(maxX, boxes[i + 2]);
            maxY = Math.max(maxY, boxes[i + 3]);
        }
        return new Bounds(minX, minY, maxX, maxY);
    }

    private static int[] sliced(double[] boxes) {
        int n = boxes.length / 4;
        Bounds all = around(boxes);
        long[] keys = new long[n];
        for (int i = 0; i < n; i++) {
            keys[i] = raster((boxes[4 * i] + boxes[4 * i + 2]) / 2, all.minX(), all.width()) << 32 | i;
        }
        Arrays.parallelSort(keys);
        int slices = (int) Math.ceil(Math.sqrt((n + FAN - 1) / FAN));
        int size = slices == 0 ? 1 : (n + slices - 1) / slices;
        IntStream.range(0, (n + size - 1) / size).parallel()
                .forEach(slice -> sortByY(boxes, all, keys, slice * size, Math.min(n, (slice + 1) * size)));
        int[] order = new int[n];
        for (int k = 0; k < n; k++) {
            order[k] = (int) keys[k];
        }
        return order;
    }

    private static void sortByY(double[] boxes, Bounds all, long[] keys, int from, int to) {
        for (int k = from; k < to; k++) {
            int i = (int) keys[k];
            keys[k] = raster((boxes[4 * i + 1] + boxes[4 * i + 3]) / 2, all.minY(), all.height()) << 32 | i;
        }
        Arrays.sort(keys, from, to);
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

    /** What is told of one box of the index. */
    @FunctionalInterface
    public interface Neighbours {

        /**
         * @param box    position of the box
         * @param others positions of the boxes that meet it, itself among them, in the order of {@link BoxIndex#query}; valid
         *               during the call only
         * @param n      how many of {@code others} count
         */
        void of(int box, int[] others, int n);
    }

    /** Number of groups of boxes that lie side by side. */
    public int groups() {
        return (order.length + FAN - 1) / FAN;
    }

    /**
     * Gives for each box of a group the boxes that meet it. The tree is gone through once for the whole group, so asking for
     * all groups in turn costs much less than one query a box, and what lies side by side is looked at together.
     *
     * @param group    0 to below {@link #groups()}
     * @param stop     asked before each box; the rest of the group is left out when it is true
     */
    public void neighbours(int group, BooleanSupplier stop, Neighbours found) {
        double[] leaves = levels[0];
        int from = group * FAN;
        int to = Math.min(order.length, from + FAN);
        int[] near = leavesNear(group);
        int[] others = new int[near.length];
        for (int i = from; i < to && !stop.getAsBoolean(); i++) {
            int n = 0;
            for (int j : near) {
                if (meet(leaves, i, leaves, j)) {
                    others[n++] = order[j];
                }
            }
            found.of(order[i], others, n);
        }
    }

    /** Leaves that meet the box around a group, in order. */
    private int[] leavesNear(int group) {
        double[] around = levels.length > 1 ? levels[1] : levels[0];
        int[] found = new int[4 * FAN];
        int n = 0;
        int level = levels.length - 1;
        int i = 0;
        while (i < order.length) {
            // i is the first leaf below the node looked at
            boolean meets = meet(levels[level], i >> BITS * level, around, group);
            if (meets && level > 0) {
                level--;
                continue;
            }
            if (meets) {
                found = n == found.length ? Arrays.copyOf(found, 2 * n) : found;
                found[n++] = i;
            }
            i = (i >> BITS * level) + 1 << BITS * level;
            while (level < levels.length - 1 && (i >> BITS * level) % FAN == 0) {
                level++;
            }
        }
        return Arrays.copyOf(found, n);
    }

    private static boolean meet(double[] a, int i, double[] b, int j) {
        return a[4 * i] <= b[4 * j + 2] && a[4 * i + 2] >= b[4 * j] && a[4 * i + 1] <= b[4 * j + 3]
                && a[4 * i + 3] >= b[4 * j + 1];
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
