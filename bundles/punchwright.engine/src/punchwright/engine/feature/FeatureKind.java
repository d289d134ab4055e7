// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.feature;

/** What a feature is, in the words of the trade. */
public enum FeatureKind {
    ROUND, SQUARE, RECTANGLE, ROUNDED_RECTANGLE, OBROUND, SINGLE_FLAT, DOUBLE_FLAT, HEXAGON, TRIANGLE, KEYHOLE, ARC_SLOT,
    /** An opening of any other form. */
    FREE_OPENING,
    /** A straight piece of the outer contour. */
    STRAIGHT_EDGE,
    /** A convex or concave arc of the outer contour. */
    ARC_EDGE,
    CORNER_NOTCH, EDGE_NOTCH,
    /** A form asked for by the part: collar, countersink, louvre, emboss and so on. */
    FORM
}
