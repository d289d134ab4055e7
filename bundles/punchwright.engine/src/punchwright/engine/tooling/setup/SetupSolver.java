// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling.setup;

import punchwright.engine.tooling.setup.SetupProblem.Solution;

/**
 * Solves {@link SetupProblem} to proven optimality, or to a stated gap at the limit of work.
 *
 * <p>Steps: {@link Reduction}; prices by {@link SetupBound} with choices by {@link Search} on the way; options and set-ups
 * whose bound lies above the best choice are dropped; what is left goes to {@link IntegerModel}. At the limit of work the best
 * choice stands and the bound says how far from the best it can be at most.
 */
public final class SetupSolver {

    private static final int STEPS = 600;
    private static final int EVERY = 25;
    private static final double EQUAL = 1e-7;

    /** More options than this are not handed to the integer program: it would take minutes. */
    private static final int MOST_OPTIONS = 6000;

    private final SetupProblem p;
    private final int mostNodes;
    private final Search search;
    private final SetupBound bound;
    private double best;
    private SetupBound.Kept kept;

    private SetupSolver(SetupProblem p, int mostNodes) {
        this.p = p;
        this.mostNodes = mostNodes;
        search = new Search(p);
        bound = new SetupBound(p);
    }

    /**
     * @param problem   every task needs at least one option
     * @param mostNodes nodes of the integer program after which a gap is stated instead of a proof
     */
    public static Solution solve(SetupProblem problem, int mostNodes) {
        Reduction smaller = new Reduction(problem, (t, o) -> true);
        if (!smaller.possible()) {
            return new Solution(new int[problem.tasks().size()], Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, 0);
        }
        Solution s = new SetupSolver(smaller.problem(), mostNodes).run();
        return new Solution(smaller.expand(s.choice()), s.cost(), s.bound(), s.nodes());
    }

    private Solution run() {
        price();
        if (closed() || p.tasks().isEmpty()) {
            return solution(best);
        }
        Reduction rest = new Reduction(p, this::mayBeBest);
        if (!rest.possible()) {
            return solution(search.bestCost());
        }
        long options = rest.problem().tasks().stream().mapToLong(java.util.List::size).sum();
        if (options > MOST_OPTIONS) {
            return solution(best);
        }
        IntegerModel.Answer answer = IntegerModel.solve(rest.problem(), mostNodes);
        if (answer.choice() != null) {
            search.offer(rest.expand(answer.choice()));
        }
        return solution(answer.proven() ? search.bestCost() : best);
    }

    private Solution solution(double boundCost) {
        int[] choice = search.best() == null ? new int[p.tasks().size()] : search.best();
        return new Solution(choice, search.bestCost(), Math.min(boundCost, search.bestCost()), 0);
    }

    private boolean closed() {
        return Double.isFinite(search.bestCost())
                && search.bestCost() - best <= EQUAL * Math.max(1, Math.abs(search.bestCost()));
    }

    /** Moves the prices up to the best bound, and searches for choices where they stand. */
    private void price() {
        double scale = 1.5;
        int since = 0;
        bound.evaluate();
        best = bound.value;
        kept = bound.keep();
        for (int i = 0; i < STEPS && !closed() && scale > 1e-3; i++) {
            if (bound.value > best + 1e-9 * Math.max(1, Math.abs(best))) {
                best = bound.value;
                kept = bound.keep();
                since = 0;
            } else if (++since >= 15) {
                scale *= 0.6;
                since = 0;
                bound.restore(kept);
            }
            if (i % EVERY == 0) {
                search.improve(bound.choice, bound);
                if (Double.isInfinite(search.bestCost())) {
                    search.makePossible(bound.choice, bound);
                }
            }
            double target = Double.isFinite(search.bestCost()) ? search.bestCost() : Math.abs(best) * 1.3 + 1;
            bound.step(target, scale);
            bound.evaluate();
        }
        bound.restore(kept);
    }

    /** Whether a choice with this option can be as good as the best known, by the bound at the best prices. */
    private boolean mayBeBest(int t, int o) {
        double limit = search.bestCost() + EQUAL * Math.max(1, Math.abs(search.bestCost())) - best;
        double extra = bound.priced(t, o) - bound.taskLeast[t];
        for (int s : p.tasks().get(t).get(o).setups()) {
            extra += Math.max(0, bound.reduced[s]);
        }
        return extra <= limit;
    }
}
