// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting.bars;

import java.util.Arrays;
import java.util.stream.IntStream;

import punchwright.engine.nesting.boxes.Work;

/**
 * The most valuable pattern on a bar: a bounded knapsack. Depth first by value for the length, cut off by the value that the
 * rest could have at most; where that takes too long, by dynamic programming over the length in steps of the greatest common
 * divisor; where those are too many, over coarser steps with lengths rounded down, which gives a bound only.
 */
final class Knapsack {

    private static final int MOST_NODES = 20_000;
    private static final int MOST_STEPS = 20_000;

    /**
     * @param counts of the best pattern found
     * @param value  of that pattern
     * @param bound  no pattern is worth more
     */
    record Best(int[] counts, double value, double bound) {
    }

    private final BarKind kind;
    private final int[] most;
    private final Work work;
    private int[] order;
    private double[] value;
    private int[] counts;
    private int[] bestCounts;
    private double best;
    private int nodes;

    Knapsack(BarKind kind, int[] most, Work work) {
        this.kind = kind;
        this.most = most;
        this.work = work;
    }

    /**
     * The best pattern for the values of the parts; parts of no value are left out. Where the search was cut off with more than
     * {@code enough} in hand, it may not be the best, and the bound is without end.
     */
    Best best(double[] values, double enough) {
        value = values;
        int[] lengths = kind.lengths();
        order = IntStream.range(0, values.length).filter(j -> kind.takes(j) && most[j] > 0 && values[j] > 1e-12).boxed()
                .sorted((a, b) -> Double.compare(values[b] / lengths[b], values[a] / lengths[a])).mapToInt(j -> j).toArray();
        counts = new int[values.length];
        bestCounts = new int[values.length];
        best = 0;
        nodes = 0;
        search(0, kind.capacity(), 0);
        work.add(nodes);
        if (nodes < MOST_NODES) {
            return new Best(bestCounts, best, best);
        }
        return best > enough ? new Best(bestCounts, best, Double.POSITIVE_INFINITY) : bySteps();
    }

    private void search(int i, int left, double sum) {
        if (sum > best) {
            best = sum;
            bestCounts = counts.clone();
        }
        if (i == order.length || nodes >= MOST_NODES) {
            return;
        }
        int j = order[i];
        int length = kind.lengths()[j];
        if (sum + value[j] / length * left <= best * (1 + 1e-12)) {
            return;
        }
        nodes++;
        for (int n = Math.min(most[j], left / length); n >= 0; n--) {
            counts[j] = n;
            search(i + 1, left - n * length, sum + n * value[j]);
        }
        counts[j] = 0;
    }

    private Best bySteps() {
        int step = kind.capacity();
        for (int j : order) {
            step = gcd(step, kind.lengths()[j]);
        }
        boolean exact = kind.capacity() / step <= MOST_STEPS;
        double unit = exact ? step : (double) kind.capacity() / MOST_STEPS;
        int steps = (int) Math.floor(kind.capacity() / unit + 1e-9);
        double[] worth = new double[steps + 1];
        int[][] taken = new int[order.length][steps + 1];
        for (int i = 0; i < order.length; i++) {
            add(order[i], (int) Math.floor(kind.lengths()[order[i]] / unit + 1e-9), worth, taken[i]);
        }
        work.add((long) order.length * steps / 10);
        if (exact && worth[steps] > best) {
            read(steps, unit, taken);
            best = worth[steps];
        }
        return new Best(bestCounts, best, Math.max(best, worth[steps]));
    }

    private void add(int part, int length, double[] worth, int[] taken) {
        double[] before = worth.clone();
        for (int u = length; u < worth.length; u++) {
            int n = length == 0 ? most[part] : Math.min(most[part], u / length);
            for (int k = 1; k <= n; k++) {
                double w = before[u - k * length] + k * value[part];
                if (w > worth[u]) {
                    worth[u] = w;
                    taken[u] = k;
                }
            }
        }
    }

    private void read(int steps, double unit, int[][] taken) {
        Arrays.fill(bestCounts, 0);
        int u = steps;
        for (int i = order.length - 1; i >= 0; i--) {
            bestCounts[order[i]] = taken[i][u];
            u -= taken[i][u] * (int) Math.floor(kind.lengths()[order[i]] / unit + 1e-9);
        }
    }

    private static int gcd(int a, int b) {
        return b == 0 ? a : gcd(b, a % b);
    }
}
