// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.sequence;

import java.util.Arrays;

/**
 * Lower bounds on closed tours and open paths through all nodes by one-trees with charges on the nodes: every tour is a
 * spanning tree with one node joined twice, so the least of these is never longer, and charges that are paid back (twice each)
 * change no tour but pull the tree's degrees towards two. The charges are found on a sparse graph by subgradient steps; what is
 * returned is worked out once on all pairs, so that it holds whatever the sparse graph left out.
 * Sources: Held, Karp, Operations Research 18 (1970) 1138-1162 and Mathematical Programming 1 (1971) 6-25; Volgenant, Jonker,
 * European Journal of Operational Research 9 (1982) 83-89 (mixing the last two degrees).
 */
public final class TourBound {

    /** Symmetric cost of a pair and a floor on it by separation, which grows with |dx| and |dy|. */
    public interface Costs extends Tour.Metric {
        double least(double dx, double dy);
    }

    private static final int NEIGHBOURS = 5;
    private static final int ROUNDS = 3;

    private final Costs costs;
    private final double[] x;
    private final double[] y;
    private final boolean closed;
    private final int n;
    private final double[] charge;
    private final int[] degree;
    private final int[] lastDegree;
    private SparseGraph graph;
    private int[][] tree;

    private TourBound(Costs costs, double[] x, double[] y, boolean closed) {
        this.costs = costs;
        this.x = x;
        this.y = y;
        this.closed = closed;
        this.n = x.length;
        this.charge = new double[n];
        this.degree = new int[n];
        this.lastDegree = new int[n];
    }

    /**
     * Bound on a closed tour.
     *
     * @param costs  must be at least its floor for every pair
     * @param steps  subgradient steps, 0 for the plain tree
     */
    public static double closed(Costs costs, double[] x, double[] y, int steps) {
        return closed(costs, x, y, near(costs, x, y, steps), steps);
    }

    /** The same where near nodes are told, as they cannot be read from coordinates: the floor by separation may then be 0. */
    public static double closed(Costs costs, double[] x, double[] y, int[][] near, int steps) {
        return x.length < 4 ? 0 : new TourBound(costs, x, y, true).run(near, steps);
    }

    /** Bound on an open path that starts and ends anywhere. */
    public static double path(Costs costs, double[] x, double[] y, int steps) {
        return x.length < 2 ? 0 : new TourBound(costs, x, y, false).run(near(costs, x, y, steps), steps);
    }

    private static int[][] near(Costs costs, double[] x, double[] y, int steps) {
        return steps == 0 || x.length < 4 ? new int[x.length][0] : new PointIndex(x, y).around(NEIGHBOURS, 2, costs::least);
    }

    private double run(int[][] near, int steps) {
        double best = exact();
        if (steps == 0 || n < 4) {
            return best;
        }
        graph = new SparseGraph(n, near, costs);
        graph.add(tree);
        double step = 0.02 * best / n;
        double[] kept = charge.clone();
        for (int round = 0; round < ROUNDS; round++) {
            ascend(steps / ROUNDS / 3, step);
            double bound = exact();
            if (bound > best) {
                best = bound;
                System.arraycopy(charge, 0, kept, 0, n);
            }
            graph.add(tree);
        }
        return best;
    }

    /**
     * Subgradient steps on the sparse graph: the step doubles while the value grows, then it is halved period by period; leaves
     * the best charges. Schedule: Helsgaun, European Journal of Operational Research 126 (2000) 106-130.
     */
    private void ascend(int longest, double firstStep) {
        double best = sparse();
        double[] bestCharge = charge.clone();
        System.arraycopy(degree, 0, lastDegree, 0, n);
        boolean growing = true;
        double step = firstStep;
        for (int period = longest; period > 0; period /= 2, step /= 2) {
            for (int p = 1; p <= period; p++) {
                if (!move(step)) {
                    return;
                }
                double value = sparse();
                if (value > best) {
                    best = value;
                    System.arraycopy(charge, 0, bestCharge, 0, n);
                    step *= growing ? 2 : 1;
                    period = p == period ? Math.min(longest, 2 * period) : period;
                } else if (growing && p > period / 2) {
                    growing = false;
                    p = 0;
                    step *= 0.75;
                }
            }
        }
        System.arraycopy(bestCharge, 0, charge, 0, n);
    }

    /** One step along the degrees; false when the one-tree is a tour already. */
    private boolean move(double step) {
        boolean tour = true;
        for (int i = 0; i < n; i++) {
            charge[i] += step * (0.7 * (degree[i] - 2) + 0.3 * (lastDegree[i] - 2));
            tour &= degree[i] == 2;
        }
        System.arraycopy(degree, 0, lastDegree, 0, n);
        return !tour;
    }

    private int[][] tree() {
        int m = closed ? n - 1 : n;
        return LeastTree.of(costs, Arrays.copyOf(x, m), Arrays.copyOf(y, m), Arrays.copyOf(charge, m));
    }

    private double sparse() {
        Arrays.fill(degree, 0);
        double tree = graph.leastTree(charge, degree, closed ? n - 1 : -1);
        return tree + special() - 2 * Arrays.stream(charge).sum();
    }

    private double exact() {
        Arrays.fill(degree, 0);
        tree = tree();
        double sum = 0;
        for (int i = 0; i < tree[0].length; i++) {
            sum += costs.cost(tree[0][i], tree[1][i]) + charge[tree[0][i]] + charge[tree[1][i]];
        }
        return sum + special() - 2 * Arrays.stream(charge).sum();
    }

    /** Joins the special node twice: the last node of a closed tour, or the place at no cost from everywhere of a path. */
    private double special() {
        int first = -1;
        int second = -1;
        double least = Double.POSITIVE_INFINITY;
        double next = Double.POSITIVE_INFINITY;
        int m = closed ? n - 1 : n;
        for (int i = 0; i < m; i++) {
            double c = closed ? costs.cost(n - 1, i) + charge[i] + charge[n - 1] : charge[i];
            if (c < least) {
                next = least;
                second = first;
                least = c;
                first = i;
            } else if (c < next) {
                next = c;
                second = i;
            }
        }
        degree[first]++;
        degree[second]++;
        if (closed) {
            degree[n - 1] = 2;
        }
        return least + next;
    }
}
