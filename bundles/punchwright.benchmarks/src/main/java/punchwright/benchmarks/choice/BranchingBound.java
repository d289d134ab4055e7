// SPDX-License-Identifier: EPL-2.0
package punchwright.benchmarks.choice;

import java.util.Arrays;
import java.util.List;

import punchwright.engine.tooling.setup.SetupProblem;
import punchwright.engine.tooling.setup.SetupProblem.Option;

/**
 * Lower bound for {@link SetupProblem}: the cost of every free set-up is shared out among the tasks, no more than it costs in
 * all;
 * each task then takes its cheapest option on its own. Any sharing gives a bound; subgradient steps look for the best one. This
 * is the linear-programming dual of facility location (Erlenkotter, Operations Research 26, 1978, from memory), for options that
 * need several set-ups.
 */
final class BranchingBound {

    /** State of a set-up in a node of the search. */
    static final byte FREE = 0;
    static final byte OPEN = 1;
    static final byte CLOSED = 2;

    private final SetupProblem problem;
    private final double[][] share;

    BranchingBound(SetupProblem problem) {
        this.problem = problem;
        share = new double[problem.tasks().size()][problem.setups()];
        int[] users = new int[problem.setups()];
        boolean[][] uses = new boolean[problem.tasks().size()][problem.setups()];
        for (int t = 0; t < share.length; t++) {
            for (Option o : problem.tasks().get(t)) {
                for (int s : o.setups()) {
                    users[s] += uses[t][s] ? 0 : 1;
                    uses[t][s] = true;
                }
            }
        }
        for (int t = 0; t < share.length; t++) {
            for (int s = 0; s < users.length; s++) {
                share[t][s] = uses[t][s] ? problem.setupCost()[s] / users[s] : 0;
            }
        }
    }

    private BranchingBound(BranchingBound from) {
        problem = from.problem;
        share = Arrays.stream(from.share).map(double[]::clone).toArray(double[][]::new);
    }

    BranchingBound copy() {
        return new BranchingBound(this);
    }

    /** Value of the bound; {@code choice} receives the option each task takes. Infinite when a task has none left. */
    double value(byte[] state, int[] choice) {
        double sum = 0;
        for (int s = 0; s < state.length; s++) {
            sum += state[s] == OPEN ? problem.setupCost()[s] : 0;
        }
        for (int t = 0; t < share.length; t++) {
            double best = Double.POSITIVE_INFINITY;
            List<Option> options = problem.tasks().get(t);
            for (int i = 0; i < options.size(); i++) {
                double cost = cost(options.get(i), state, t);
                if (cost < best) {
                    best = cost;
                    choice[t] = i;
                }
            }
            sum += best;
        }
        return sum;
    }

    private double cost(Option o, byte[] state, int task) {
        double cost = o.cost();
        for (int s : o.setups()) {
            cost += state[s] == CLOSED ? Double.POSITIVE_INFINITY : state[s] == OPEN ? 0 : share[task][s];
        }
        return cost;
    }

    /** One subgradient step of the length {@code step}: tasks that used a set-up pay more of it, the others less. */
    void step(byte[] state, int[] choice, double step) {
        for (int s = 0; s < state.length; s++) {
            if (state[s] == FREE) {
                double[] v = new double[share.length];
                for (int t = 0; t < share.length; t++) {
                    v[t] = share[t][s] + (uses(t, choice[t], s) ? step : 0);
                }
                double cut = cut(v, problem.setupCost()[s]);
                for (int t = 0; t < share.length; t++) {
                    share[t][s] = Math.max(0, v[t] - cut);
                }
            }
        }
    }

    boolean uses(int task, int option, int setup) {
        return Arrays.binarySearch(problem.tasks().get(task).get(option).setups(), setup) >= 0;
    }

    /** What to take from every entry so that the positive rest sums to at most {@code total} (projection on a simplex). */
    private static double cut(double[] v, double total) {
        double[] sorted = v.clone();
        Arrays.sort(sorted);
        double sum = 0;
        double cut = 0;
        for (int i = sorted.length - 1, n = 1; i >= 0; i--, n++) {
            sum += sorted[i];
            double c = (sum - total) / n;
            if (sorted[i] > c) {
                cut = c;
            }
        }
        return Math.max(0, cut);
    }
}
