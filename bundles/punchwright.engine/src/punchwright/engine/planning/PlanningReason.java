// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.planning;

import punchwright.engine.finding.Reason;
import punchwright.engine.finding.Severity;

/** Why a plan cannot be made, or what to know about it. */
public enum PlanningReason implements Reason {
    /** Sheet too thick or too thin for the machine. */
    THICKNESS("PLANNING-THICKNESS", Severity.ERROR),
    /** No stock of the material and thickness. */
    NO_STOCK("PLANNING-NO-STOCK", Severity.ERROR),
    /** Nothing to plan. */
    NO_PARTS("PLANNING-NO-PARTS", Severity.ERROR),
    /** Neighbours cannot share their cut. */
    CUT_NOT_SHARED("PLANNING-CUT-NOT-SHARED", Severity.NOTE),
    /** Parts lie in one direction only. */
    ONE_DIRECTION("PLANNING-ONE-DIRECTION", Severity.NOTE);

    private final String code;
    private final Severity severity;

    PlanningReason(String code, Severity severity) {
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
