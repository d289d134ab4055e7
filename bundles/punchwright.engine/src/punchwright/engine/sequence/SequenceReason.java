// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.sequence;

import punchwright.engine.finding.Reason;
import punchwright.engine.finding.Severity;

/** Why an order is refused or needs a look. */
public enum SequenceReason implements Reason {
    /** Arguments: number of hits without a holding, id of the first. */
    NO_HOLDING(Severity.ERROR),
    /** Arguments: form tool, hit number of the cut, its distance in mm. */
    CUT_AFTER_FORM(Severity.WARNING),
    /** Arguments: first tool, later tool, reason of the rule. */
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
