// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import punchwright.engine.finding.Reason;
import punchwright.engine.finding.Severity;

/** Why a figure of this package deserves a look. Arguments in the order of the texts in {@code findings.properties}. */
public enum PressReason implements Reason {

    /** An input outside a formula's range: symbol, value, unit, least, largest, formula. */
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
    SHEAR_CAPPED(Severity.NOTE),
    /** More force than the place, tool or press takes: force kN, limit kN, per cent. */
    OVER_LIMIT(Severity.WARNING),
    /** Nibbling pitch below half the thickness: pitch mm, least mm, thickness mm. */
    PITCH_SMALL(Severity.WARNING),
    /** Last step of a cut narrower than the thickness: step mm, thickness mm. */
    SLIVER(Severity.WARNING),
    /** Finest class of ISO 2768-1 that is kept: deviation mm, size mm, class, its tolerance mm. */
    CLASS_REACHED(Severity.NOTE),
    /** No class of ISO 2768-1 is kept: deviation mm, size mm. */
    NO_CLASS(Severity.WARNING),
    /** Slugs may come up: causes, of how many, then 1 or 0 for wide clearance, oil without suction, thin, soft, small punch. */
    SLUG_PULLING(Severity.WARNING),
    /** Opening too near to a form: distance mm, least mm, thickness mm. */
    FORM_NEAR(Severity.WARNING),
    /** Form higher than custom: height mm, highest mm. */
    FORM_HIGH(Severity.WARNING),
    /** Form made in several hits: height mm, most in one hit mm, hits. */
    FORM_HITS(Severity.NOTE),
    /** Collar stretched too far: hole punched first mm, mean diameter mm, stretch, largest stretch. */
    STRETCH(Severity.WARNING),
    /** Collar too low for its thread: height mm, least mm, pitch mm. */
    COLLAR_LOW(Severity.WARNING),
    /** Hole under a collar is not the one it needs: hole mm, needed mm, collar mm. */
    COLLAR_HOLE(Severity.WARNING),
    /** Collar without a hole punched first: needed mm, collar mm. */
    COLLAR_SOLID(Severity.WARNING),
    /** Countersink leaves no land: depth mm, deepest mm, thickness mm. */
    COUNTERSINK_DEEP(Severity.WARNING),
    /** Copper bar: 0 hole, 1 edge distance or 2 web; value mm, least mm, thickness mm. */
    COPPER_BAR(Severity.WARNING),
    /** Half-shear breaks through: depth mm, limit mm. */
    HALF_SHEAR_DEEP(Severity.WARNING),
    /** Punch stressed beyond what is permitted: stress MPa, permitted MPa. */
    PUNCH_STRESS(Severity.WARNING),
    /** The edge was not measured at this clearance; the nearest measured is shown: per cent per side, least, largest. */
    EDGE_UNMEASURED(Severity.NOTE),
    /** A value that makes no sense: symbol, value as text, 1 where 0 would do. */
    SENSELESS(Severity.ERROR),
    /** No whole number: symbol, value. */
    NOT_WHOLE(Severity.ERROR),
    /** Nothing comes out for these values: symbol of the figure. */
    NO_RESULT(Severity.ERROR),
    /** No room for the inserts: number, outer diameter mm, wall mm. */
    NO_ROOM(Severity.ERROR),
    /** Scallop not below the tool's radius: scallop mm, radius mm. */
    SCALLOP_LARGE(Severity.ERROR),
    /** Overlap not below the tool's side: overlap mm, side mm. */
    OVERLAP_LARGE(Severity.ERROR),
    /** Hole not below the head: hole mm, head mm. */
    HEAD_SMALL(Severity.ERROR),
    /** No thread of this size in the tables: size mm. */
    NO_THREAD(Severity.WARNING);

    private final Severity severity;

    PressReason(Severity severity) {
        this.severity = severity;
    }

    @Override
    public Severity severity() {
        return severity;
    }
}
