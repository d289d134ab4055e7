// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.motion;

import java.util.Arrays;
import java.util.List;

/**
 * The least spanning tree of some nodes (Prim, O(n^2) time, O(n) memory).
 * Source: Prim, Bell System Technical Journal 36 (1957) 1389-1401.
 *
 * @param length   sum of its branches
 * @param dearest  its largest branch
 */
record SpanningTree(double length, double dearest) {

    /** Symmetric weight of a branch, not negative. */
    interface Weight<T> {
        double of(T from, T to);
    }

    /** The tree of any number of nodes; none or one give length 0. */
    static <T> SpanningTree of(List<T> nodes, Weight<T> weight) {
        Object[] left = nodes.toArray();
        double[] key = new double[left.length];
        Arrays.fill(key, Double.POSITIVE_INFINITY);
        double sum = 0;
        double dearest = 0;
        int best = 0;
        for (int n = left.length - 1; n > 0; n--) {
            Object last = take(left, key, best, n);
            best = relax(left, key, n, last, weight);
            sum += key[best];
            dearest = Math.max(dearest, key[best]);
        }
        return new SpanningTree(sum, dearest);
    }

    /** What any closed walk through all nodes costs at least: its length without its dearest step joins all nodes too. */
    double closed() {
        return length + dearest;
    }

    private static Object take(Object[] left, double[] key, int index, int last) {
        Object taken = left[index];
        left[index] = left[last];
        key[index] = key[last];
        return taken;
    }

    @SuppressWarnings("unchecked")
    private static <T> int relax(Object[] left, double[] key, int n, Object last, Weight<T> weight) {
        int best = 0;
        for (int i = 0; i < n; i++) {
            key[i] = Math.min(key[i], weight.of((T) last, (T) left[i]));
            best = key[i] < key[best] ? i : best;
        }
        return best;
    }
}
