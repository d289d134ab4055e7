// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.advice;

import java.util.List;

import punchwright.engine.planning.PartDemand;

/**
 * An order of the book.
 *
 * @param number       what the shop calls it
 * @param timesPerYear how often a year it is made, above 0
 * @param demands      its parts with the pieces of one run
 */
public record BookOrder(String number, double timesPerYear, List<PartDemand> demands) {

    public BookOrder {
        demands = List.copyOf(demands);
        if (!(timesPerYear > 0)) {
            throw new IllegalArgumentException("order " + number + ": times a year is " + timesPerYear + "; it must be above 0");
        }
    }
}
