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

    private final Bounds[][] levels;
    private final int[] order;

    /** Boxes by position; an empty box is never found. */
    public BoxIndex(List<Bounds> boxes) {
        order = sliced(boxes);
        Bounds[] leaves = new Bounds[order.length];
        for (int i = 0; i < leaves.length; i++) {
            leaves[i] = boxes.get(order[i]);
        }
        int depth = 1;
        for (int n = leaves.length; n > 1; n = (n + FAN - 1) / FAN) {
            depth++;
        }
        levels = new Bounds[depth][];
        levels[0] = leaves;
        for (int i = 1; i < depth; i++) {
            levels[i] = parents(levels[i - 1]);
        }
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

    private static Bounds[] parents(Bounds[] children) {
        Bounds[] parents = new Bounds[(children.length + FAN - 1) / FAN];
        Arrays.fill(parents, Bounds.EMPTY);
        for (int i = 0; i < children.length; i++) {
            parents[i / FAN] = parents[i / FAN].including(children[i]);
        }
        return parents;
    }

    /** Gives the position of every box that meets the query (touching counts). */
    public void query(Bounds query, IntConsumer found) {
        if (order.length > 0) {
            int top = levels.length - 1;
            for (int i = 0; i < levels[top].length; i++) {
                visit(top, i, query, found);
            }
        }
    }

    private void visit(int level, int node, Bounds query, IntConsumer found) {
        if (!levels[level][node].intersects(query)) {
            return;
        }
        if (level == 0) {
            found.accept(order[node]);
            return;
        }
        int end = Math.min(levels[level - 1].length, (node + 1) * FAN);
        for (int child = node * FAN; child < end; child++) {
            visit(level - 1, child, query, found);
        }
    }
}
