// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.proof;

import punchwright.engine.finding.Reason;
import punchwright.engine.finding.Severity;

/** Why a plan is not proven, or needs a look. Arguments in the order of {@code findings.properties}. */
public enum ProofReason implements Reason {
    /** A hit enters a part: hit, tool, depth mm, tolerance mm, part number. */
    GOUGE(Severity.ERROR),
    /** Edge left uncut: length mm, part number. */
    UNCUT(Severity.ERROR),
    /** Intended micro-joint cut away or nowhere near a part: width mm. */
    JOINT_MISSING(Severity.ERROR),
    /** Part meant to hang on micro-joints is loose: part number. */
    PART_LOOSE(Severity.ERROR),
    /** Part cut free before its last hit: part number, separating hit, later hit. */
    LOOSE_EARLY(Severity.ERROR),
    /** Part without micro-joints taken off or falling: part number, larger side mm, drop opening mm. */
    PART_FALLS(Severity.WARNING),
    /** Parts overlap: two part numbers. */
    PARTS_OVERLAP(Severity.ERROR),
    /** Part reaches over the sheet's edge: part number, mm. */
    PART_OFF_SHEET(Severity.ERROR),
    /** Hit beside the sheet: hit. */
    OFF_SHEET(Severity.ERROR),
    /** Hit at a clamp: hit, tool, gap mm, dead zone mm. */
    CLAMP(Severity.ERROR),
    /** Clamp holds on metal cut away before: holding, clamp x mm, hit. */
    CLAMP_ON_CUT(Severity.ERROR),
    /** Sheet not held: holding, clamps on the sheet, clamps needed. */
    UNCLAMPED(Severity.ERROR),
    /** Clamps nearer than the machine allows: holding, mm, least mm. */
    CLAMP_SPACING(Severity.ERROR),
    /** Hit beyond the travel along x: hit, x mm, from mm, to mm. */
    TRAVEL_X(Severity.ERROR),
    /** Hit beyond the travel along y: hit, y mm, limit mm. */
    TRAVEL_Y(Severity.ERROR),
    /** Clamp beyond its travel on the carriage: holding, mm from the carriage's zero, least mm, largest mm. */
    CLAMP_RANGE(Severity.ERROR),
    /** The clamped edge strikes the frame: hit, its distance from the tool axis mm, throat mm. */
    THROAT(Severity.ERROR),
    /** Holding reaches farther than the axis: holding, mm, travel mm. */
    WINDOW(Severity.ERROR),
    /** Hit names a holding that is not there: hit, holding, holdings. */
    NO_HOLDING(Severity.ERROR),
    /** Holdings not in ascending order: hit, holding, holding before. */
    HOLDING_ORDER(Severity.ERROR),
    /** Thickness outside the machine: mm, least mm, largest mm. */
    THICKNESS(Severity.ERROR),
    /** Sheet too heavy: kg, kg. */
    MASS(Severity.ERROR),
    /** Sheet too long: mm, mm. */
    SHEET_LENGTH(Severity.ERROR),
    /** Force above the press: tool, kN, kN. */
    PRESS_FORCE(Severity.ERROR),
    /** Force above the place or holder: tool, kN, place, kN. */
    PLACE_FORCE(Severity.ERROR),
    /** Punch narrower than the rule: tool, mm, least mm. */
    PUNCH_SMALL(Severity.ERROR),
    /** No die clearance near the need: tool, nearest mm, thickness mm. */
    CLEARANCE(Severity.ERROR),
    /** Tool stands in no place: tool. */
    NO_PLACE(Severity.ERROR),
    /** Angle that the place cannot set: hit, tool, degrees. */
    ANGLE(Severity.ERROR),
    /** Tool due for grinding within the run: tool, hits, hits left. */
    GRIND_DUE(Severity.WARNING),
    /** Cut or form at a standing form: hit, form tool, gap mm, least mm, 1 where it forms. */
    FORM_STRUCK(Severity.ERROR),
    /** Nearer to a standing form than its tool's record allows: hit, form tool, gap mm, least mm, hit of the form. */
    FORM_CLOSE(Severity.WARNING),
    /** Form too high or deep for the machine: hit, form tool, mm, clear mm, 1 where downward. */
    FORM_HIGH(Severity.ERROR),
    /** The same where the machine's record does not say what passes. */
    FORM_ROOM_UNKNOWN(Severity.WARNING),
    /** Clamp of a later holding on a form: holding, clamp x mm, form tool, hit of the form. */
    FORM_CLAMPED(Severity.ERROR),
    /** Form under the hold-down of a reposition: holding, form tool, hit of the form, distance mm, least mm, number of forms. */
    FORM_HELD_DOWN(Severity.ERROR),
    /** Bead that its hits leave open at an end or between: part number, length mm, form tool. */
    FORM_GAP(Severity.ERROR),
    /** Form made in fewer hits than its tool's record says: part number, hits, hits needed, form tool. */
    FORM_UNFINISHED(Severity.ERROR),
    /** Form asked for but not made: part number, kind. */
    FORM_MISSING(Severity.ERROR),
    /** Form made in a part that does not ask for it there: hit, form tool, part number. */
    FORM_UNASKED(Severity.ERROR),
    /** Same hit twice: hit, first hit, tool. */
    DOUBLE(Severity.WARNING),
    /** Slug larger than the drop opening: longer side mm, drop opening mm. */
    SLUG_LARGE(Severity.WARNING),
    /** Sliver: width mm, least mm. */
    SLIVER(Severity.WARNING);

    private final Severity severity;

    ProofReason(Severity severity) {
        this.severity = severity;
    }

    @Override
    public Severity severity() {
        return severity;
    }
}
