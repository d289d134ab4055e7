// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import punchwright.engine.finding.Reason;
import punchwright.engine.finding.Severity;

/** Why a figure of this package deserves a look. Arguments in the order of the texts in {@code findings.properties}. */
public enum PressReason implements Reason {

    /** An input outside a formula's range: quantity, value, unit, least, largest, formula. */
    RANGE(Severity.WARNING),
    /** Clearance on hand is tighter than the rule: clearance mm, needed mm, per cent. */
    CLEARANCE_TIGHT(Severity.NOTE),
    /** Clearance on hand is wider than the rule: clearance mm, needed mm, per cent. */
    CLEARANCE_WIDE(Severity.NOTE),
    /** No tolerance in the table: size mm, class. */
    NO_TOLERANCE(Severity.WARNING),
    /** Web thinner than custom: web mm, least mm, thickness mm. */
    WEB(Severity.WARNING),
    /** Shear on the punch saves more than is trusted: factor by formula, factor used. */
    SHEAR_CAPPED(Severity.NOTE);

    private final Severity severity;

    PressReason(Severity severity) {
        this.severity = severity;
    }

    @Override
    public Severity severity() {
        return severity;
    }
}
