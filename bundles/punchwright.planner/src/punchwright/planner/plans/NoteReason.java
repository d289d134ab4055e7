// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.plans;

import punchwright.engine.finding.Reason;
import punchwright.engine.finding.Severity;

/** What is noticed while a plan is gathered or written. */
enum NoteReason implements Reason {
    /** A tool whose record cannot be read is not used. */
    TOOL_LEFT_OUT("PLANS-TOOL-LEFT-OUT", Severity.WARNING);

    private final String code;
    private final Severity severity;

    NoteReason(String code, Severity severity) {
        this.code = code;
        this.severity = severity;
    }

    @Override
    public String code() {
        return code;
    }

    @Override
    public Severity severity() {
        return severity;
    }
}
