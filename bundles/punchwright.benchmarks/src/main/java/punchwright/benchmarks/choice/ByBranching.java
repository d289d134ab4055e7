// SPDX-License-Identifier: EPL-2.0
package punchwright.benchmarks.choice;

import java.util.List;
import java.util.stream.IntStream;

import punchwright.engine.tooling.setup.SetupProblem;
import punchwright.engine.tooling.setup.SetupProblem.Option;
import punchwright.engine.tooling.setup.SetupProblem.Solution;

/**
 * Solves {@link SetupProblem} exactly by branch and bound on set-ups, or to a stated gap at the limit of work.
 *
 * <p>Start: a local search. Each node improves the bound of {@link BranchingBound} by subgradient steps, turns each step's choice
 * into a real one, and branches on the free set-up that is used most unevenly. The limit is a number of nodes, never the clock.
 */
final class ByBranching {

    private static final int ROOT_STEPS = 150;
    private static final int NODE_STEPS = 25;

    private final SetupProblem problem;
    private final int mostNodes;
    private int[] best;
    private double bestCost = Double.POSITIVE_INFINITY;
    private double openBound = Double.POSITIVE_INFINITY;
    private int nodes;

    private ByBranching(SetupProblem problem, int mostNodes) {
        this.problem = problem;
        this.mostNodes = mostNodes;
        best = new int[problem.tasks().size()];
    }

    /** Every task needs at least one option. */
    static Solution solve(SetupProblem problem, int mostNodes) {
        ByBranching solver = new ByBranching(problem, mostNodes);
        solver.improve(solver.best.clone());
        solver.node(new byte[problem.setups()], new BranchingBound(problem), ROOT_STEPS);
        return new Solution(solver.best, solver.bestCost, Math.min(solver.bestCost, solver.openBound), solver.nodes);
    }

    private void node(byte[] state, BranchingBound bound, int steps) {
        if (nodes >= mostNodes) {
            openBound = Math.min(openBound, bound.value(state, new int[best.length]));
            return;
        }
        nodes++;
        if (!closeAtLimits(state)) {
            return;
        }
        int[] used = new int[state.length];
        if (cutOff(state, bound, steps, used)) {
            return;
        }
        int branch = branch(state, used);
        if (branch < 0) {
            return;
        }
        for (byte next : new byte[] { BranchingBound.OPEN, BranchingBound.CLOSED }) {
            byte[] child = state.clone();
            child[branch] = next;
            node(child, bound.copy(), NODE_STEPS);
        }
    }

    /** Closes the free set-ups of limits that are used up; false when a limit is broken. */
    private boolean closeAtLimits(byte[] state) {
        int[] open = new int[problem.limits().length];
        for (int s = 0; s < state.length; s++) {
            if (state[s] == BranchingBound.OPEN && problem.limitOf()[s] >= 0) {
                open[problem.limitOf()[s]]++;
            }
        }
        for (int s = 0; s < state.length; s++) {
            int limit = problem.limitOf()[s];
            if (limit >= 0 && state[s] == BranchingBound.FREE && open[limit] >= problem.limits()[limit]) {
                state[s] = BranchingBound.CLOSED;
            }
        }
        return IntStream.range(0, open.length).allMatch(i -> open[i] <= problem.limits()[i]);
    }

    /** Improves the bound; true when nothing better can be below this node. Counts in which steps each set-up was used. */
    private boolean cutOff(byte[] state, BranchingBound bound, int steps, int[] used) {
        int[] choice = new int[best.length];
        double highest = Double.NEGATIVE_INFINITY;
        double scale = 1;
        for (int i = 0; i < steps; i++) {
            double value = bound.value(state, choice);
            if (value >= bestCost - 1e-9) {
                return true;
            }
            improve(choice.clone());
            scale = value > highest + 1e-9 ? scale : 0.9 * scale;
            highest = Math.max(highest, value);
            int gradient = count(state, choice, used);
            bound.step(state, choice, scale * Math.max(1e-6, Math.min(bestCost, highest * 2 + 1) - value) / Math.max(1,
                    gradient));
        }
        return bound.value(state, choice) >= bestCost - 1e-9;
    }

    private int count(byte[] state, int[] choice, int[] used) {
        int gradient = 0;
        for (int t = 0; t < choice.length; t++) {
            for (int s : problem.tasks().get(t).get(choice[t]).setups()) {
                used[s]++;
                gradient += state[s] == BranchingBound.FREE ? 1 : 0;
            }
        }
        return gradient;
    }

    /** The free set-up with the largest cost at stake; -1 when none is free. */
    private int branch(byte[] state, int[] used) {
        int branch = -1;
        for (int s = 0; s < state.length; s++) {
            if (state[s] == BranchingBound.FREE && (branch < 0
                    || problem.setupCost()[s] * used[s] > problem.setupCost()[branch] * used[branch])) {
                branch = s;
            }
        }
        return branch;
    }

    /** Keeps a choice when it is the best so far, then the same with its local optimum. */
    private void improve(int[] choice) {
        int[] users = new int[problem.setups()];
        for (int t = 0; t < choice.length; t++) {
            count(users, t, choice[t], 1);
        }
        keep(choice.clone(), users);
        boolean changed = true;
        for (int round = 0; changed && round < 10; round++) {
            changed = false;
            for (int t = 0; t < choice.length; t++) {
                count(users, t, choice[t], -1);
                int better = cheapest(users, t, choice[t]);
                changed |= better != choice[t];
                choice[t] = better;
                count(users, t, better, 1);
            }
        }
        keep(choice, users);
    }

    private void keep(int[] choice, int[] users) {
        double cost = cost(choice, users);
        if (cost < bestCost - 1e-9) {
            bestCost = cost;
            best = choice;
        }
    }

    private void count(int[] users, int task, int option, int by) {
        for (int s : problem.tasks().get(task).get(option).setups()) {
            users[s] += by;
        }
    }

    private int cheapest(int[] users, int task, int current) {
        List<Option> options = problem.tasks().get(task);
        int cheapest = current;
        double least = extra(options.get(current), users);
        for (int i = 0; i < options.size(); i++) {
            double cost = extra(options.get(i), users);
            if (cost < least - 1e-9) {
                least = cost;
                cheapest = i;
            }
        }
        return cheapest;
    }

    private double extra(Option o, int[] users) {
        double cost = o.cost();
        for (int s : o.setups()) {
            cost += users[s] > 0 ? 0 : problem.setupCost()[s] + overLimit(users, s);
        }
        return cost;
    }

    /** A large cost when one more set-up would break its limit. */
    private double overLimit(int[] users, int setup) {
        int limit = problem.limitOf()[setup];
        if (limit < 0) {
            return 0;
        }
        int open = 0;
        for (int s = 0; s < users.length; s++) {
            open += problem.limitOf()[s] == limit && users[s] > 0 ? 1 : 0;
        }
        return open < problem.limits()[limit] ? 0 : 1e7;
    }

    private double cost(int[] choice, int[] users) {
        double cost = 0;
        for (int t = 0; t < choice.length; t++) {
            cost += problem.tasks().get(t).get(choice[t]).cost();
        }
        int[] open = new int[problem.limits().length];
        for (int s = 0; s < users.length; s++) {
            cost += users[s] > 0 ? problem.setupCost()[s] : 0;
            if (users[s] > 0 && problem.limitOf()[s] >= 0) {
                open[problem.limitOf()[s]]++;
            }
        }
        boolean kept = true;
        for (int i = 0; i < open.length; i++) {
            kept &= open[i] <= problem.limits()[i];
        }
        return kept ? cost : Double.POSITIVE_INFINITY;
    }
}
