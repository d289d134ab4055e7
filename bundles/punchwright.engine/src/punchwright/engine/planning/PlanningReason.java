// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.planning;

import punchwright.engine.finding.Reason;
import punchwright.engine.finding.Severity;

/** Why a plan cannot be made, or what to know about it. */
public enum PlanningReason implements Reason {
    /** Sheet too thick or too thin for the machine. */
    THICKNESS(Severity.ERROR),
    /** No stock of the material and thickness. */
    NO_STOCK(Severity.ERROR),
    /** Nothing to plan. */
    NO_PARTS(Severity.ERROR),
    /** Neighbours cannot share their cut. */
    CUT_NOT_SHARED(Severity.NOTE),
    /** Parts lie in one direction only. */
    ONE_DIRECTION(Severity.NOTE),
    /** A pinned tool's feature is not on the part: tool, kind of feature, x mm, y mm. */
    PIN_LOST(Severity.WARNING),
    /** A layout that a person arranged fails the check: layout, object, what is wrong. */
    KEPT_LAYOUT(Severity.ERROR),
    /** The sheet of a layout that a person arranged is not in stock: layout, sheet. */
    KEPT_STOCK(Severity.ERROR),
    /** Sheets are refused, layouts that a person arranged among them: number of these, widest web mm, first reason. */
    KEPT_REFUSED(Severity.WARNING);

    private final Severity severity;

    PlanningReason(Severity severity) {
        this.severity = severity;
    }

    @Override
    public Severity severity() {
        return severity;
    }
}
