// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import punchwright.engine.finding.Reason;
import punchwright.engine.finding.Severity;

/** Reasons of this stage. Arguments of each in the order of the texts in findings.properties. */
public enum NestingReason implements Reason {
    /** No sheet in stock at all that the machine takes. */
    NO_SHEET(Severity.ERROR),
    /** A part fits on no sheet at any allowed angle. */
    PART_TOO_LARGE(Severity.ERROR),
    /** Stock runs out before the quantity is made. */
    STOCK_SHORT(Severity.ERROR),
    /** A sheet is longer than the machine takes and is left out. */
    SHEET_LONG(Severity.WARNING),
    /** A sheet is wider than the machine takes and is left out. */
    SHEET_WIDE(Severity.WARNING),
    /** A sheet is heavier than the machine takes and is left out. */
    SHEET_HEAVY(Severity.WARNING),
    /** Edge margins and clamp strip leave no room on a sheet. */
    SHEET_ALL_MARGIN(Severity.WARNING),
    /** The search stopped at the work limit. */
    WORK_LIMIT(Severity.NOTE),
    /** Who waited stopped the search. */
    CANCELLED(Severity.NOTE),
    /** A rest of a sheet that is large enough to keep. */
    REMNANT_LEFT(Severity.NOTE),
    /** How many pieces are made of a part that need not be made. */
    OPTIONAL_MADE(Severity.NOTE),
    /** A part that need not be made fits on no sheet at any allowed angle. */
    OPTIONAL_TOO_LARGE(Severity.NOTE);

    private final Severity severity;

    NestingReason(Severity severity) {
        this.severity = severity;
    }

    @Override
    public Severity severity() {
        return severity;
    }
}
