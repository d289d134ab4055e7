// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling.setup;

import java.util.List;

/**
 * Which option each task takes, when options need set-ups that cost once however many tasks share them, and set-ups need seats.
 *
 * @param tasks     the tasks, each with at least one option
 * @param setupCost cost of each set-up wherever it stands
 * @param limitOf   for each set-up the number of the limit it counts against; -1 for none
 * @param limits    most set-ups of each limit
 * @param seating   where set-ups may stand; null when there is room for all
 */
public record SetupProblem(List<List<Option>> tasks, double[] setupCost, int[] limitOf, int[] limits, Seating seating) {

    public SetupProblem {
        tasks = tasks.stream().map(List::copyOf).toList();
    }

    /** With room for all. */
    public SetupProblem(List<List<Option>> tasks, double[] setupCost, int[] limitOf, int[] limits) {
        this(tasks, setupCost, limitOf, limits, null);
    }

    /** One way to do a task: its own cost and the set-ups it needs, ascending. */
    public record Option(double cost, int[] setups) {
    }

    /**
     * @param choice option of each task
     * @param cost   own costs, set-ups and seats together; infinite when no choice was found that keeps the limits
     * @param bound  no choice costs less
     * @param nodes  nodes of the search tree looked at
     */
    public record Solution(int[] choice, double cost, double bound, int nodes) {

        public boolean proven() {
            return cost - bound <= 1e-6 * Math.max(1, Math.abs(cost));
        }

        /** How much dearer it may be than the best, as a share of the bound; 0 when proven. */
        public double gap() {
            return proven() ? 0 : (cost - bound) / Math.max(1e-9, Math.abs(bound));
        }
    }

    public int setups() {
        return setupCost.length;
    }
}
