// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting.bars;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

import punchwright.engine.nesting.boxes.Work;

/** Whole patterns out of a linear program: runs rounded down, the pieces left solved again, until none is left. */
final class Dive {

    private final BarProblem problem;
    private final Set<Pattern> pool;
    private final Work work;

    Dive(BarProblem problem, Set<Pattern> pool, Work work) {
        this.problem = problem;
        this.pool = pool;
        this.work = work;
    }

    /** A plan inside the branch at a cost below the limit, or null. {@code skip} leaves out the first so many of the picks. */
    Map<Pattern, Integer> plan(Master solved, Range branch, double limit, int skip) {
        Map<Pattern, Integer> runs = new LinkedHashMap<>();
        Range range = branch;
        Master master = solved;
        double cost = 0;
        int skipped = skip;
        while (true) {
            Range before = range;
            range = whole(master, range, runs);
            if (range == before) {
                Pattern one = pick(master, range, skipped);
                if (one == null) {
                    return null;
                }
                skipped = 0;
                range = range.after(problem, one, 1);
                runs.merge(one, 1, Integer::sum);
            }
            cost = cost(problem, runs);
            if (range.done()) {
                return cost < limit ? runs : null;
            }
            master = new Master(problem, range, work).solve(pool, limit - cost);
            if (!master.feasible() || cost + master.bound() >= limit || work.spent()) {
                return null;
            }
        }
    }

    static double cost(BarProblem problem, Map<Pattern, Integer> runs) {
        double cost = 0;
        for (Map.Entry<Pattern, Integer> e : runs.entrySet()) {
            cost += e.getValue() * problem.cost(e.getKey());
        }
        return cost;
    }

    private Range whole(Master master, Range range, Map<Pattern, Integer> runs) {
        Range left = range;
        double[] x = master.runs();
        for (int c = 0; c < x.length; c++) {
            Pattern p = master.columns().get(c);
            int n = Math.min((int) Math.floor(x[c] + 1e-6), Math.min(p.mostRuns(left.demand()), free(p, left)));
            if (n > 0) {
                left = left.after(problem, p, n);
                runs.merge(p, n, Integer::sum);
            }
        }
        return left;
    }

    private int free(Pattern p, Range range) {
        return Math.min(range.most()[p.kind()], range.onHand()[problem.kinds().get(p.kind()).stock()]);
    }

    /** The pattern with the largest share of a run, or one further down the line. */
    private Pattern pick(Master master, Range range, int skip) {
        double[] x = master.runs();
        Pattern best = null;
        for (int s = 0; s <= skip; s++) {
            int at = -1;
            for (int c = 0; c < x.length; c++) {
                at = x[c] > 1e-6 && free(master.columns().get(c), range) > 0 && (at < 0 || x[c] > x[at] + 1e-9) ? c : at;
            }
            if (at < 0) {
                return best;
            }
            x[at] = 0;
            best = master.columns().get(at).within(range.demand());
        }
        return best;
    }
}
