// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting.bars;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import punchwright.engine.nesting.boxes.Work;

/**
 * The linear program over all patterns of one branch, columns as they are needed. Rows: pieces of each part, most and least bars
 * of each kind, bars of each stock.
 */
final class Master {

    private static final double EPS = 1e-9;

    private final BarProblem problem;
    private final Range range;
    private final Work work;
    private final int parts;
    private final int kinds;
    private final int rows;
    private final Simplex simplex;
    private final List<Pattern> columns = new ArrayList<>();
    private double bound = Double.NEGATIVE_INFINITY;
    private boolean stuck;
    private boolean optimal;

    Master(BarProblem problem, Range range, Work work) {
        this.problem = problem;
        this.range = range;
        this.work = work;
        this.parts = range.demand().length;
        this.kinds = problem.kinds().size();
        this.rows = parts + 2 * kinds + range.onHand().length;
        double[] right = new double[rows];
        double[] costs = new double[rows];
        double high = 1e4 * problem.kinds().stream().mapToDouble(k -> Math.abs(k.cost()) + k.costPerUnit() * k.capacity() + 1)
                .max().orElse(1);
        for (int j = 0; j < parts; j++) {
            right[j] = range.demand()[j];
            costs[j] = high;
        }
        for (int k = 0; k < kinds; k++) {
            right[parts + k] = range.most()[k];
            right[parts + kinds + k] = range.least()[k];
            costs[parts + kinds + k] = high;
        }
        for (int s = 0; s < range.onHand().length; s++) {
            right[parts + 2 * kinds + s] = range.onHand()[s];
        }
        this.simplex = new Simplex(right, costs);
    }

    /** Solves; patterns come from {@code pool} first, and new ones go there. Stops early once the bound reaches the limit. */
    Master solve(Set<Pattern> pool, double limit) {
        usable(pool).forEach(columns::add);
        int rounds = 0;
        while (!stuck && bound < limit && rounds++ < 60 * rows && !work.spent()) {
            work.add(rows);
            double[] prices = simplex.prices();
            optimal = !enterOwn(prices) && !enterKnown(prices) && !enterNew(prices, pool);
            stuck |= optimal;
        }
        return this;
    }

    private List<Pattern> usable(Set<Pattern> pool) {
        Set<Pattern> out = new LinkedHashSet<>();
        for (Pattern p : pool) {
            Pattern less = p.within(range.demand());
            if (range.most()[p.kind()] > 0 && sum(less.counts()) > 0) {
                out.add(less);
            }
        }
        return List.copyOf(out);
    }

    private static int sum(int[] counts) {
        int sum = 0;
        for (int c : counts) {
            sum += c;
        }
        return sum;
    }

    /** Surplus of pieces or of least bars, slack of most bars: columns with one entry. */
    private boolean enterOwn(double[] prices) {
        int best = -1;
        double least = -EPS;
        for (int r = 0; r < rows; r++) {
            double reduced = isLeast(r) ? prices[r] : -prices[r];
            if (reduced < least) {
                least = reduced;
                best = r;
            }
        }
        if (best < 0) {
            return false;
        }
        double[] entries = new double[rows];
        entries[best] = isLeast(best) ? -1 : 1;
        stuck = !simplex.enter(Integer.MAX_VALUE - best, entries, 0);
        return true;
    }

    private boolean isLeast(int row) {
        return row < parts || row >= parts + kinds && row < parts + 2 * kinds;
    }

    private boolean enterKnown(double[] prices) {
        int best = -1;
        double least = -1e-7;
        for (int c = 0; c < columns.size(); c++) {
            double reduced = problem.cost(columns.get(c)) - worth(columns.get(c), prices);
            if (reduced < least) {
                least = reduced;
                best = c;
            }
        }
        if (best >= 0) {
            enter(best);
        }
        work.add(columns.size());
        return best >= 0;
    }

    private void enter(int column) {
        Pattern p = columns.get(column);
        double[] entries = new double[rows];
        for (int j = 0; j < parts; j++) {
            entries[j] = p.counts()[j];
        }
        entries[parts + p.kind()] = 1;
        entries[parts + kinds + p.kind()] = 1;
        entries[parts + 2 * kinds + problem.kinds().get(p.kind()).stock()] = 1;
        stuck = !simplex.enter(column, entries, problem.cost(p));
    }

    private double worth(Pattern p, double[] prices) {
        double worth = barPrice(p.kind(), prices);
        for (int j = 0; j < parts; j++) {
            worth += p.counts()[j] * prices[j];
        }
        return worth;
    }

    private double barPrice(int kind, double[] prices) {
        return prices[parts + kind] + prices[parts + kinds + kind]
                + prices[parts + 2 * kinds + problem.kinds().get(kind).stock()];
    }

    /** The best new pattern by knapsacks; their values make the bound as well. */
    private boolean enterNew(double[] prices, Set<Pattern> pool) {
        double[] perBar = new double[kinds];
        int best = -1;
        double least = -1e-7;
        for (int k = 0; k < kinds; k++) {
            BarKind kind = problem.kinds().get(k);
            perBar[k] = kind.cost();
            if (range.most()[k] == 0) {
                continue;
            }
            double[] values = new double[parts];
            for (int j = 0; j < parts; j++) {
                values[j] = Math.max(0, prices[j]) - kind.costPerUnit() * kind.lengths()[j];
            }
            Knapsack.Best found = new Knapsack(kind, range.demand(), work)
                    .best(values, kind.cost() - barPrice(k, prices) + 1e-7);
            perBar[k] -= found.bound();
            double reduced = kind.cost() - found.value() - barPrice(k, prices);
            if (reduced < -1e-7) {
                Pattern p = new Pattern(k, found.counts());
                pool.add(p);
                columns.add(p);
                best = reduced < least ? columns.size() - 1 : best;
                least = Math.min(least, reduced);
            }
        }
        if (Arrays.stream(perBar).allMatch(Double::isFinite)) {
            bound = Math.max(bound, lagrangian(prices, perBar));
        }
        if (best >= 0) {
            enter(best);
        }
        return best >= 0;
    }

    /** Least cost of all bars when pieces are paid at the prices: holds for any prices of 0 or more. */
    private double lagrangian(double[] prices, double[] perBar) {
        double sum = 0;
        for (int j = 0; j < parts; j++) {
            sum += Math.max(0, prices[j]) * range.demand()[j];
        }
        int[] left = range.onHand().clone();
        int[] free = new int[kinds];
        for (int k = 0; k < kinds; k++) {
            sum += range.least()[k] * perBar[k];
            left[problem.kinds().get(k).stock()] -= range.least()[k];
            free[k] = range.most()[k] - range.least()[k];
        }
        for (int next = cheapest(perBar, free, left); next >= 0; next = cheapest(perBar, free, left)) {
            int bars = Math.min(free[next], left[problem.kinds().get(next).stock()]);
            sum += bars * perBar[next];
            free[next] = 0;
            left[problem.kinds().get(next).stock()] -= bars;
        }
        return sum;
    }

    private int cheapest(double[] perBar, int[] free, int[] left) {
        int best = -1;
        for (int k = 0; k < kinds; k++) {
            boolean open = free[k] > 0 && left[problem.kinds().get(k).stock()] > 0 && perBar[k] < 0;
            best = open && (best < 0 || perBar[k] < perBar[best]) ? k : best;
        }
        return best;
    }

    /** Lower bound on the cost of any whole solution of the branch. */
    double bound() {
        return bound;
    }

    /** Whether all pieces are made and the least bars used. */
    boolean feasible() {
        return simplex.started(0, parts) + simplex.started(parts + kinds, parts + 2 * kinds) < 1e-6;
    }

    /** Whether nothing can improve the linear program any more. */
    boolean optimal() {
        return optimal;
    }

    List<Pattern> columns() {
        return columns;
    }

    /** Runs of each column, fractions of bars included. */
    double[] runs() {
        return simplex.values(columns.size());
    }

    /** Bars of each kind, fractions included. */
    double[] bars() {
        double[] runs = runs();
        double[] bars = new double[kinds];
        for (int c = 0; c < runs.length; c++) {
            bars[columns.get(c).kind()] += runs[c];
        }
        return bars;
    }
}
