// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import punchwright.engine.finding.Reason;
import punchwright.engine.finding.Severity;

/** Why a tool or a feature is refused or deserves a look. Arguments in the order of {@code findings.properties}. */
public enum ToolingReason implements Reason {

    /** Sheet outside the machine's thickness: thickness, machine, least, largest. */
    THICKNESS(Severity.ERROR),
    /** Feature without a tool: what it is, the nearest tool owned. */
    NO_TOOL(Severity.ERROR),
    /** Opening smaller than the material allows: mm, least mm, thickness mm, grade. */
    SMALL_OPENING(Severity.ERROR),
    /** Inside radius too small for every round tool: radius mm, largest diameter mm, smallest owned mm. */
    INSIDE_RADIUS(Severity.ERROR),
    /** Waste ends in an acute corner: degrees, x mm, y mm. */
    ACUTE_CORNER(Severity.ERROR),
    /** Edge between two inside corners shorter than any rectangular tool: mm, shortest side mm. */
    SHORT_EDGE(Severity.ERROR),
    /** Tools that would cut this edge cannot be set to its angle: degrees, x mm, y mm. */
    EDGE_ANGLE(Severity.ERROR),
    /** Every tool that cuts this edge would enter the part: x mm, y mm, room there mm, smallest side of a tool mm. */
    TIGHT(Severity.ERROR),
    /** Openings or edge touch or cross: web mm. */
    NO_WEB(Severity.ERROR),
    /** Form without a tool: form's name, the nearest tool of its kind owned. */
    NO_FORM_TOOL(Severity.ERROR),
    /** Form that does not pass on the machine: mm, clear mm, machine, 1 where downward. */
    FORM_STANDS(Severity.ERROR),
    /** Form that a drawing marks without saying which: what it is, x mm, y mm. */
    FORM_UNNAMED(Severity.ERROR),
    /** More force than any place that takes the tool: kN, place, kN. */
    FORCE(Severity.ERROR),
    /** More force than the press: kN, machine, kN. */
    PRESS_FORCE(Severity.ERROR),
    /** Tool larger than any place: mm, machine, mm. */
    DIAMETER(Severity.ERROR),
    /** Punch narrower than the material allows: mm, least mm, thickness mm, grade. */
    SMALL(Severity.ERROR),
    /** Punch stress above the permitted: MPa, permitted MPa. */
    PUNCH_STRESS(Severity.ERROR),
    /** No die near the clearance: nearest mm, needed mm. */
    CLEARANCE(Severity.ERROR),
    /** Clearance usable but far off: nearest mm, needed mm. */
    CLEARANCE_OFF(Severity.WARNING),
    /** Tool worn out: hits since grind, hits allowed. */
    WORN_OUT(Severity.ERROR),
    /** Grind due within this part: hits left, hits needed. */
    GRIND_DUE(Severity.WARNING),
    /** Forbidden by the engineer's wish: tool. */
    FORBIDDEN(Severity.NOTE),
    /** Feature that only a forbidden tool would make: tool, what it is. */
    NEEDS_FORBIDDEN(Severity.ERROR),
    /** The pinned tool takes part in no way to make the feature: tool id. */
    PIN(Severity.WARNING),
    /** Tool passed over, dearer: its cost s, chosen cost s, its hits, chosen hits. */
    DEARER(Severity.NOTE),
    /** Tool passed over, no way to make the feature with it: feature, tool length mm, tool width mm. */
    DOES_NOT_FIT(Severity.NOTE),
    /** No choice keeps to the tools on hand: ways to make the feature. */
    ON_HAND(Severity.ERROR),
    /** None on hand: number. */
    NOT_ON_HAND(Severity.ERROR),
    /** Angle cannot be set: angle deg, tool's freedom. */
    ANGLE(Severity.ERROR),
    /** Edge of the part left uncut: length mm. */
    UNCUT(Severity.ERROR),
    /** A hit destroys a micro-joint. */
    JOINT_CUT(Severity.ERROR),
    /** Fewer micro-joints than asked: found, asked. */
    FEW_JOINTS(Severity.WARNING),
    /** Slug left hanging on joints, removed by hand: size mm, largest that falls mm. */
    SLUG_BY_HAND(Severity.NOTE),
    /** Slivers left loose: number, sheet thickness mm. */
    SLIVER(Severity.WARNING),
    /** A tool at a fixed angle limits how the part may lie: tool, angle deg. */
    FIXED_ANGLE(Severity.NOTE),
    /** No place left for a tool: tool. */
    NO_PLACE(Severity.ERROR),
    /** Tool set by hand during the run: tool. */
    BY_HAND(Severity.NOTE),
    /** Tool needed at several angles, more than are owned or can stand: tool, angles, on hand. */
    ANGLES(Severity.ERROR);

    private final Severity severity;

    ToolingReason(Severity severity) {
        this.severity = severity;
    }

    @Override
    public Severity severity() {
        return severity;
    }
}
