// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.geometry;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;

/**
 * Finds the boxes that meet a box: a tree packed once, by slices in x and then in y (S. Leutenegger et al., "STR: a simple
 * and efficient algorithm for R-tree packing", ICDE 1997). Numbers come in a fixed order, not sorted.
 */
public final class BoxIndex {

    private static final int FAN = 8;

    private final Bounds[][] levels;
    private final int[] order;

    /** Boxes by position; an empty box is never found. */
    public BoxIndex(List<Bounds> boxes) {
        order = sliced(boxes);
        Bounds[] leaves = Arrays.stream(order).mapToObj(boxes::get).toArray(Bounds[]::new);
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
        Comparator<Integer> byX = Comparator.comparingDouble(i -> boxes.get(i).minX() + boxes.get(i).maxX());
        Comparator<Integer> byY = Comparator.comparingDouble(i -> boxes.get(i).minY() + boxes.get(i).maxY());
        Integer[] all = IntStream.range(0, n).boxed().toArray(Integer[]::new);
        Arrays.sort(all, byX);
        int slices = (int) Math.ceil(Math.sqrt((n + FAN - 1) / FAN));
        int size = slices == 0 ? 1 : (n + slices - 1) / slices;
        for (int from = 0; from < n; from += size) {
            Arrays.sort(all, from, Math.min(n, from + size), byY);
        }
        return Arrays.stream(all).mapToInt(Integer::intValue).toArray();
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
