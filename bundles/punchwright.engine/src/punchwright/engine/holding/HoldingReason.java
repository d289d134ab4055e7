// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.holding;

import punchwright.engine.finding.Reason;
import punchwright.engine.finding.Severity;

/** Reasons of this stage. Arguments of each in the order of the texts in findings.properties. */
public enum HoldingReason implements Reason {
    /** A hit that no clamp setting, reposition or turn reaches. */
    HIT_UNREACHABLE(Severity.ERROR),
    /** The sheet is longer than the machine takes even with repositions. */
    SHEET_LONG(Severity.ERROR),
    /** The sheet is wider than twice the reach across it. */
    SHEET_WIDE(Severity.ERROR),
    /** The sheet is too short for one clamp. */
    NO_CLAMP_FITS(Severity.ERROR),
    /** A clamp that would stand on a form made in an earlier holding. */
    CLAMP_ON_FORM(Severity.ERROR),
    /** The sheet is turned by 180 degrees: edges made on both sides meet only as well as it is squared again. */
    TURNED(Severity.WARNING),
    /** All hits are made with the sheet loaded the other way round. */
    OTHER_EDGE(Severity.NOTE),
    /** The sheet is too short for all clamps. */
    FEWER_CLAMPS(Severity.NOTE),
    /** Parts whose hits are spread over several holdings. */
    PARTS_SPLIT(Severity.NOTE),
    /** The search stopped at its limit: fewer holdings might do. */
    SEARCH_LIMIT(Severity.NOTE);

    private final Severity severity;

    HoldingReason(Severity severity) {
        this.severity = severity;
    }

    @Override
    public Severity severity() {
        return severity;
    }
}
