// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.List;

/**
 * Which option each task takes, when options need set-ups that cost once however many tasks share them.
 *
 * @param tasks      the tasks, each with its options
 * @param setupCost  cost of each set-up
 * @param limitOf    for each set-up the number of the limit it counts against; -1 for none
 * @param limits     most set-ups of each limit
 */
record SetupProblem(List<List<Option>> tasks, double[] setupCost, int[] limitOf, int[] limits) {

    /** One way to do a task: its own cost and the set-ups it needs, ascending. */
    record Option(double cost, int[] setups) {
    }

    /**
     * @param choice option of each task
     * @param cost   own costs and set-ups together; infinite when no choice keeps the limits
     * @param bound  no choice costs less
     * @param nodes  nodes of the search tree looked at
     */
    record Solution(int[] choice, double cost, double bound, int nodes) {

        boolean proven() {
            return cost - bound <= 1e-6 * Math.max(1, Math.abs(cost));
        }
    }

    int setups() {
        return setupCost.length;
    }
}
