// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.advice;

import java.util.List;

/**
 * An order on one machine, for one run.
 *
 * @param machine  number of the machine in the job
 * @param lines    its parts in order
 * @param setUps   setting up the tools of its sheets, currency a run
 * @param refusals what cannot be made, in order
 */
record OrderOnMachine(int machine, List<PartLine> lines, double setUps, List<Refusal> refusals) {

    OrderOnMachine {
        lines = List.copyOf(lines);
        refusals = List.copyOf(refusals);
    }

    int made() {
        return (int) lines.stream().filter(PartLine::made).count();
    }

    /** Currency a run, of the parts that are made. */
    double cost() {
        return setUps + lines.stream().filter(PartLine::made).mapToDouble(PartLine::cost).sum();
    }

    /** More parts first, then less cost. */
    boolean betterThan(OrderOnMachine other) {
        return other == null || made() > other.made() || made() == other.made() && cost() < other.cost() - 1e-12;
    }
}
