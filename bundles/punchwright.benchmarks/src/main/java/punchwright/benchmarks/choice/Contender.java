// SPDX-License-Identifier: EPL-2.0
package punchwright.benchmarks.choice;

import punchwright.engine.tooling.setup.SetupProblem;
import punchwright.engine.tooling.setup.SetupProblem.Solution;

/** One way to solve the choice of tools. */
interface Contender {

    String name();

    /**
     * @param work limit of work, in units of its own, the larger the longer
     */
    Solution solve(SetupProblem problem, double work);
}
