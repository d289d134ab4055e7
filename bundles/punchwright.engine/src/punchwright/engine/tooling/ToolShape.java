// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

/** Shape of a punch. */
public enum ToolShape {
    ROUND, SQUARE, RECTANGLE, OBROUND, SINGLE_FLAT, DOUBLE_FLAT, HEXAGON, TRIANGLE, CORNER_RADIUS, CLUSTER, SLITTING,
    FREE_CONTOUR, COLLAR, COUNTERSINK, LOUVRE, EMBOSS, LANCE, ROLLER, MARKING;

    /** Whether the tool forms, cuts no opening through, or marks: it makes only FORM features. */
    public boolean forms() {
        return ordinal() >= COLLAR.ordinal();
    }
}
