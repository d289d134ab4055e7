// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.sequence;

import java.util.Arrays;

/**
 * A k-d tree over points in the plane for nearest points under any separation that grows with |dx| and with |dy|.
 * Source: Bentley, Communications of the ACM 18 (1975) 509-517.
 */
public final class PointIndex {

    /** How far apart two points are; must not fall when |dx| or |dy| grows, and must not depend on their signs. */
    public interface Separation {
        double of(double dx, double dy);
    }

    private static final int LEAF = 8;

    private final double[] x;
    private final double[] y;
    private final int[] order;

    public PointIndex(double[] x, double[] y) {
        this.x = x;
        this.y = y;
        this.order = new int[x.length];
        Arrays.setAll(order, i -> i);
        build(0, x.length, true);
    }

    /** For each point up to {@code k} others, nearest first; ties by index. */
    public int[][] nearest(int k, Separation separation) {
        int[][] lists = new int[x.length][];
        for (int i = 0; i < x.length; i++) {
            lists[i] = nearest(i, Math.min(k, x.length - 1), separation);
        }
        return lists;
    }

    /**
     * For each point the {@code k} nearest others and the {@code each} nearest in each of the four quarters around it, nearest
     * first: points on the rim of a cluster then also know points of the next one.
     */
    public int[][] around(int k, int each, Separation separation) {
        int[][] lists = new int[x.length][];
        for (int i = 0; i < x.length; i++) {
            Nearest all = new Nearest(Math.min(k + 4 * each, x.length - 1));
            offerAll(nearest(i, Math.min(k, x.length - 1), separation), i, separation, all);
            for (int quarter = 0; quarter < 4; quarter++) {
                Nearest found = new Nearest(each);
                search(0, x.length, true, i, separation, found, 0, 0, quarter);
                offerAll(found.toArray(), i, separation, all);
            }
            lists[i] = all.toArray();
        }
        return lists;
    }

    private void offerAll(int[] others, int point, Separation s, Nearest all) {
        for (int other : others) {
            if (!all.has(other)) {
                all.offer(other, s.of(x[other] - x[point], y[other] - y[point]));
            }
        }
    }

    private int[] nearest(int point, int k, Separation separation) {
        Nearest found = new Nearest(k);
        search(0, x.length, true, point, separation, found, 0, 0, -1);
        return found.toArray();
    }

    private boolean in(int quarter, int other, int point) {
        return quarter < 0 || x[other] > x[point] == ((quarter & 1) == 0) && y[other] > y[point] == ((quarter & 2) == 0);
    }

    private void search(int from, int to, boolean byX, int point, Separation s, Nearest found, double boxDx, double boxDy,
            int quarter) {
        if (s.of(boxDx, boxDy) > found.worst()) {
            return;
        }
        if (to - from <= LEAF) {
            for (int i = from; i < to; i++) {
                int other = order[i];
                if (other != point && in(quarter, other, point)) {
                    found.offer(other, s.of(x[other] - x[point], y[other] - y[point]));
                }
            }
            return;
        }
        int middle = (from + to) >>> 1;
        double d = byX ? x[point] - x[order[middle]] : y[point] - y[order[middle]];
        boolean lowFirst = d < 0;
        double farDx = byX ? Math.abs(d) : boxDx;
        double farDy = byX ? boxDy : Math.abs(d);
        boolean skipLow = quarter >= 0 && (quarter & (byX ? 1 : 2)) == 0 && d >= 0;
        boolean skipHigh = quarter >= 0 && (quarter & (byX ? 1 : 2)) != 0 && d < 0;
        if (!(lowFirst ? skipLow : skipHigh)) {
            search(lowFirst ? from : middle, lowFirst ? middle : to, !byX, point, s, found, boxDx, boxDy, quarter);
        }
        if (!(lowFirst ? skipHigh : skipLow)) {
            search(lowFirst ? middle : from, lowFirst ? to : middle, !byX, point, s, found, farDx, farDy, quarter);
        }
    }

    private void build(int from, int to, boolean byX) {
        if (to - from <= LEAF) {
            return;
        }
        int middle = (from + to) >>> 1;
        select(order, from, to - 1, middle, byX ? x : y);
        build(from, middle, !byX);
        build(middle, to, !byX);
    }

    /** Brings the element of the given rank to its index, smaller ones before it (quickselect, middle pivot). */
    static void select(int[] order, int from, int to, int rank, double[] key) {
        int low = from;
        int high = to;
        while (low < high) {
            double pivot = key[order[(low + high) >>> 1]];
            int i = low;
            int j = high;
            while (i <= j) {
                while (key[order[i]] < pivot) {
                    i++;
                }
                while (key[order[j]] > pivot) {
                    j--;
                }
                if (i <= j) {
                    int t = order[i];
                    order[i++] = order[j];
                    order[j--] = t;
                }
            }
            if (rank <= j) {
                high = j;
            } else if (rank >= i) {
                low = i;
            } else {
                return;
            }
        }
    }

    /** The k nearest so far, sorted. */
    private static final class Nearest {
        private final int[] nodes;
        private final double[] distances;
        private int size;

        Nearest(int k) {
            nodes = new int[k];
            distances = new double[k];
        }

        double worst() {
            return size < nodes.length ? Double.POSITIVE_INFINITY : size == 0 ? -1 : distances[size - 1];
        }

        void offer(int node, double distance) {
            if (size == nodes.length && (size == 0 || !before(distance, node, size - 1))) {
                return;
            }
            int i = size < nodes.length ? size++ : size - 1;
            for (; i > 0 && before(distance, node, i - 1); i--) {
                nodes[i] = nodes[i - 1];
                distances[i] = distances[i - 1];
            }
            nodes[i] = node;
            distances[i] = distance;
        }

        private boolean before(double distance, int node, int index) {
            return distance < distances[index] || distance == distances[index] && node < nodes[index];
        }

        boolean has(int node) {
            for (int i = 0; i < size; i++) {
                if (nodes[i] == node) {
                    return true;
                }
            }
            return false;
        }

        int[] toArray() {
            return Arrays.copyOf(nodes, size);
        }
    }
}
