// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.sequence;

import punchwright.engine.finding.Reason;
import punchwright.engine.finding.Severity;

/** Why an order is refused or needs a look. */
public enum SequenceReason implements Reason {
    /** Arguments: number of hits without a holding, id of the first. */
    NO_HOLDING(Severity.ERROR),
    /**
     * Arguments: form tool, later hit, its distance and the least one in mm, hit of the form, later tool, 1 where it forms too,
     * 1 where the holdings differ, holding of the form, holding of the later hit.
     */
    CUT_AFTER_FORM(Severity.WARNING),
    /** Arguments: holding, diameter of the hold-down in mm. */
    FORM_HELD_DOWN(Severity.WARNING),
    /** Arguments: first tool, later tool, number of the usual rule or 0, reason of an added rule. */
    RULES_CIRCULAR(Severity.WARNING);

    private final Severity severity;

    SequenceReason(Severity severity) {
        this.severity = severity;
    }

    @Override
    public Severity severity() {
        return severity;
    }
}
