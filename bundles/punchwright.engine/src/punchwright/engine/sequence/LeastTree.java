// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.sequence;

import java.util.Arrays;

/**
 * The least spanning tree over all pairs of points, each pair weighted by its cost and by a charge on each of its nodes.
 * Boruvka's rounds; in each the nearest foreign point of every point is searched in a k-d tree, whose boxes know the least
 * charge in them and whether all of it belongs to one piece already. Exact for any cost that has a floor by separation.
 * Sources: Boruvka 1926; Bentley, Communications of the ACM 18 (1975) 509-517.
 */
final class LeastTree {

    private static final int LEAF = 6;

    private final TourBound.Costs costs;
    private final double[] x;
    private final double[] y;
    private final double[] charge;
    private final int[] order;
    private final int nodes;
    private final double[] box;
    private final double[] least;
    private final int[] owner;
    private final int[] piece;
    private final int[] bestFrom;
    private final int[] bestTo;
    private final double[] best;
    private final int[] edgeA;
    private final int[] edgeB;
    private int edges;

    private LeastTree(TourBound.Costs costs, double[] x, double[] y, double[] charge) {
        int n = x.length;
        this.costs = costs;
        this.x = x;
        this.y = y;
        this.charge = charge;
        this.order = new int[n];
        Arrays.setAll(order, i -> i);
        int depth = 1;
        while (LEAF << depth < n) {
            depth++;
        }
        nodes = 2 << depth + 1;
        box = new double[4 * nodes];
        least = new double[nodes];
        owner = new int[nodes];
        piece = new int[n];
        Arrays.setAll(piece, i -> i);
        bestFrom = new int[n];
        bestTo = new int[n];
        best = new double[n];
        edgeA = new int[Math.max(0, n - 1)];
        edgeB = new int[edgeA.length];
    }

    /** The tree's branches as two arrays of ends. */
    static int[][] of(TourBound.Costs costs, double[] x, double[] y, double[] charge) {
        LeastTree t = new LeastTree(costs, x, y, charge);
        t.build(1, 0, x.length);
        while (t.edges < t.edgeA.length) {
            t.round();
        }
        return new int[][] {t.edgeA, t.edgeB};
    }

    private void build(int node, int from, int to) {
        double[] b = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};
        double low = Double.POSITIVE_INFINITY;
        for (int i = from; i < to; i++) {
            int p = order[i];
            b[0] = Math.min(b[0], x[p]);
            b[1] = Math.max(b[1], x[p]);
            b[2] = Math.min(b[2], y[p]);
            b[3] = Math.max(b[3], y[p]);
            low = Math.min(low, charge[p]);
        }
        System.arraycopy(b, 0, box, 4 * node, 4);
        least[node] = low;
        if (to - from > LEAF) {
            int middle = (from + to) >>> 1;
            PointIndex.select(order, from, to - 1, middle, b[1] - b[0] >= b[3] - b[2] ? x : y);
            build(2 * node, from, middle);
            build(2 * node + 1, middle, to);
        }
    }

    private void round() {
        own(1, 0, order.length);
        Arrays.fill(best, Double.POSITIVE_INFINITY);
        for (int i = 0; i < order.length; i++) {
            search(1, 0, order.length, order[i], floor(1, order[i]));
        }
        for (int p = 0; p < piece.length; p++) {
            if (best[p] < Double.POSITIVE_INFINITY && root(bestFrom[p]) != root(bestTo[p])) {
                edgeA[edges] = bestFrom[p];
                edgeB[edges++] = bestTo[p];
                int a = root(bestFrom[p]);
                int b = root(bestTo[p]);
                piece[Math.max(a, b)] = Math.min(a, b);
            }
        }
        for (int p = 0; p < piece.length; p++) {
            piece[p] = root(p);
        }
    }

    private int root(int p) {
        int r = p;
        while (piece[r] != r) {
            r = piece[r];
        }
        return r;
    }

    /** Marks each box that lies wholly in one piece. */
    private int own(int node, int from, int to) {
        int one;
        if (to - from > LEAF) {
            int middle = (from + to) >>> 1;
            int a = own(2 * node, from, middle);
            int b = own(2 * node + 1, middle, to);
            one = a == b ? a : -1;
        } else {
            one = piece[order[from]];
            for (int i = from + 1; i < to; i++) {
                one = piece[order[i]] == one ? one : -1;
            }
        }
        owner[node] = one;
        return one;
    }

    private void search(int node, int from, int to, int p, double floor) {
        int mine = piece[p];
        if (owner[node] == mine || floor > best[mine]) {
            return;
        }
        if (to - from <= LEAF) {
            for (int i = from; i < to; i++) {
                int q = order[i];
                if (piece[q] != mine) {
                    offer(mine, p, q, costs.cost(p, q) + charge[p] + charge[q]);
                }
            }
            return;
        }
        int middle = (from + to) >>> 1;
        double low = floor(2 * node, p);
        double high = floor(2 * node + 1, p);
        if (low <= high) {
            search(2 * node, from, middle, p, low);
            search(2 * node + 1, middle, to, p, high);
        } else {
            search(2 * node + 1, middle, to, p, high);
            search(2 * node, from, middle, p, low);
        }
    }

    /** Keeps the cheapest; equal ones by their ends, so that rounds close no circle. */
    private void offer(int mine, int p, int q, double cost) {
        boolean better = cost < best[mine] || cost == best[mine] && before(p, q, bestFrom[mine], bestTo[mine]);
        if (better) {
            best[mine] = cost;
            bestFrom[mine] = p;
            bestTo[mine] = q;
        }
    }

    private static boolean before(int p, int q, int a, int b) {
        int low = Math.min(p, q);
        int other = Math.min(a, b);
        return low != other ? low < other : Math.max(p, q) < Math.max(a, b);
    }

    private double floor(int node, int p) {
        double dx = Math.max(0, Math.max(box[4 * node] - x[p], x[p] - box[4 * node + 1]));
        double dy = Math.max(0, Math.max(box[4 * node + 2] - y[p], y[p] - box[4 * node + 3]));
        return costs.least(dx, dy) + least[node] + charge[p];
    }
}
