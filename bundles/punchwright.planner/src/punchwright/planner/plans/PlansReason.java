// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.plans;

import punchwright.engine.finding.Reason;
import punchwright.engine.finding.Severity;

/** What is noticed while a plan is gathered or written. */
enum PlansReason implements Reason {
    /** A tool whose record cannot be read is not used. */
    TOOL_LEFT_OUT(Severity.WARNING),
    /** A machine without inputs of its rate is reckoned at the usual one: machine, currency an hour. */
    USUAL_RATE(Severity.WARNING);

    private final Severity severity;

    PlansReason(Severity severity) {
        this.severity = severity;
    }

    @Override
    public Severity severity() {
        return severity;
    }
}
