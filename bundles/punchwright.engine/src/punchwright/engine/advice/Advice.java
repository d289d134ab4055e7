// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.advice;

import java.util.List;

import punchwright.engine.finding.Finding;

/**
 * The answer to what to buy.
 *
 * @param ranking   what saves, best first: by yearly saving, then by what becomes possible, then by price and id
 * @param enabling  what makes something possible, best first: by parts that nobody makes today, by whole orders, by parts, by
 *                  saving, then by price and id; rows may stand in both lists
 * @param today     the orders with the tools owned
 * @param perYear   yearly cost of the order book today, as in {@link OrderToday#perYear}
 * @param additions size of the search space
 * @param workedOut additions worked out; the others were ruled out by their bound
 * @param choices   choices of tools for a part that were made
 * @param findings  what is worth knowing, cautions first
 */
public record Advice(List<Recommendation> ranking, List<Recommendation> enabling, List<OrderToday> today, double perYear,
        int additions, int workedOut,
        int choices, List<Finding> findings) {

    public Advice {
        ranking = List.copyOf(ranking);
        enabling = List.copyOf(enabling);
        today = List.copyOf(today);
        findings = List.copyOf(findings);
    }
}
