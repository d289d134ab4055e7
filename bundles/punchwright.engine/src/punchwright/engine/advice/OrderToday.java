// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.advice;

import java.util.List;

import punchwright.engine.finding.Finding;

/**
 * An order with the tools owned today.
 *
 * @param order        number of the order
 * @param machine      name of the machine that makes most of its parts at the least cost; empty when none makes any
 * @param perYear      yearly cost there: hits, changes, wear, web and set-ups of tools, without material and secondary work
 * @param partsMade    parts that this machine makes
 * @param parts        parts of the order
 * @param refusals     on each machine why it refuses the order or parts of it
 */
public record OrderToday(String order, String machine, double perYear, int partsMade, int parts, List<Finding> refusals) {

    public OrderToday {
        refusals = List.copyOf(refusals);
    }
}
