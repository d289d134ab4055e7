// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.advice;

import punchwright.engine.finding.Reason;
import punchwright.engine.finding.Severity;

/** What is worth knowing about an advice. Arguments in the order of {@code findings.properties}. */
public enum AdviceReason implements Reason {

    /** Yearly quantities by the span of the orders' dates: days, times a year. */
    SPAN(Severity.NOTE),
    /** Yearly quantities as given: times a year. */
    PER_YEAR(Severity.NOTE),
    /** The order book has no order. */
    NO_ORDERS(Severity.ERROR),
    /** An order or part is left out since it cannot be read: why. */
    LEFT_OUT(Severity.WARNING),
    /** A price by the table of common practice: price. */
    TABLE_PRICE(Severity.WARNING),
    /** The limit of work was reached: choices, additions not worked out, the largest bound among them. */
    WORK_LIMIT(Severity.WARNING),
    /** No addition saves anything: additions looked at. */
    NOTHING_SAVES(Severity.NOTE),
    /** A given price fits no addition: id. */
    UNKNOWN_PRICE(Severity.WARNING),
    /** A choice of tools is not proven best: cost s, bound s. */
    NOT_PROVEN(Severity.NOTE),
    /** Material, stock, sheet sizes and layouts are not part of the comparison. */
    NOT_COUNTED(Severity.NOTE),
    /** Each part is priced by its own choice of tools, planning chooses for a sheet: parts that share a change. */
    EACH_ALONE(Severity.NOTE),
    /** Savings of several additions do not add up. */
    NOT_ADDITIVE(Severity.NOTE);

    private final Severity severity;

    AdviceReason(Severity severity) {
        this.severity = severity;
    }

    @Override
    public Severity severity() {
        return severity;
    }
}
