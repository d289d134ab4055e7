// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting.bars;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.Set;

import punchwright.engine.nesting.boxes.Work;

/** Finds the cheapest plan and proves it, branching on the number of bars of each kind. */
public final class BarSearch {

    private static final int MOST_BRANCHES = 600;
    private static final int DIVES = 20;
    private static final int EARLY = 100;

    private record Branch(Range range, double bound, int number) {
    }

    private final BarProblem problem;
    private final Work work;
    private final Set<Pattern> pool = new LinkedHashSet<>();
    private final PriorityQueue<Branch> open = new PriorityQueue<>(
            Comparator.comparingDouble(Branch::bound).thenComparingInt(Branch::number));
    private Map<Pattern, Integer> best;
    private double cost = Double.POSITIVE_INFINITY;
    private double unresolved = Double.POSITIVE_INFINITY;
    private int branches;

    private BarSearch(BarProblem problem, Work work) {
        this.problem = problem;
        this.work = work;
    }

    /** The cheapest plan found with its bound, or null when the bars on hand do not hold all pieces (or none was found). */
    public static BarPlan solve(BarProblem problem, Work work) {
        return problem.everyPartFits() ? new BarSearch(problem, work).run() : null;
    }

    /** Lower bound on the cost of any plan, by the linear program alone; minus infinity when the work is spent at once. */
    public static double bound(BarProblem problem, Work work) {
        return new Master(problem, Range.of(problem), work).solve(new LinkedHashSet<>(), Double.POSITIVE_INFINITY).bound();
    }

    private BarPlan run() {
        open.add(new Branch(Range.of(problem), Double.NEGATIVE_INFINITY, 0));
        while (!open.isEmpty() && open.peek().bound < limit() && branches++ < MOST_BRANCHES && !work.spent()) {
            branch(open.poll());
        }
        double left = open.isEmpty() ? Double.POSITIVE_INFINITY : open.peek().bound;
        return best == null ? null : new BarPlan(best, cost, Math.min(cost, Math.min(left, unresolved)));
    }

    /** A plan must be cheaper than this to count. */
    private double limit() {
        return best == null ? cost : cost - 1e-7 * Math.max(1, Math.abs(cost));
    }

    private void branch(Branch b) {
        Master master = new Master(problem, b.range, work).solve(pool, limit());
        double bound = Math.max(b.bound, master.bound());
        if (bound >= limit() || master.optimal() && !master.feasible()) {
            return;
        }
        double[] bars = master.bars();
        int kind = mostFractional(bars);
        if (!master.feasible()) {
            unresolved = Math.min(unresolved, bound);
        } else if (kind >= 0) {
            dives(master, b.range, branches <= EARLY ? 1 : 0);
            push(b.range.atMost(kind, (int) Math.floor(bars[kind])), bound);
            push(b.range.atLeast(kind, (int) Math.ceil(bars[kind])), bound);
        } else {
            whole(b.range, bars, bound);
        }
    }

    /** Bars in whole numbers: patterns for exactly these, and the rest of the branch without them. */
    private void whole(Range range, double[] bars, double bound) {
        Range exact = range;
        for (int k = 0; k < bars.length; k++) {
            int n = (int) Math.round(bars[k]);
            push(exact.atMost(k, n - 1), bound);
            push(exact.atLeast(k, n + 1), bound);
            exact = exact.atLeast(k, n).atMost(k, n);
        }
        Master master = new Master(problem, exact, work).solve(pool, limit());
        dives(master, exact, DIVES);
        double exactBound = Math.max(bound, master.bound());
        if (exactBound < limit()) {
            unresolved = Math.min(unresolved, exactBound);
        }
    }

    private void push(Range range, double bound) {
        if (!range.isEmpty()) {
            open.add(new Branch(range, bound, branches));
        }
    }

    private static int mostFractional(double[] bars) {
        int best = -1;
        double most = 1e-6;
        for (int k = 0; k < bars.length; k++) {
            double f = Math.abs(bars[k] - Math.rint(bars[k]));
            if (f > most) {
                most = f;
                best = k;
            }
        }
        return best;
    }

    private void dives(Master master, Range range, int count) {
        double target = master.bound();
        for (int i = 0; i < count && master.feasible() && target < limit(); i++) {
            Map<Pattern, Integer> found = new Dive(problem, pool, work).plan(master, range, limit(), i);
            if (found != null) {
                best = new LinkedHashMap<>(found);
                cost = Dive.cost(problem, found);
            }
        }
    }
}
