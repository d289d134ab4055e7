// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing;

import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Openings;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Pose;

/**
 * An opening given by sizes; see {@link Openings} for what lies where at angle 0.
 *
 * @param form           its form
 * @param center         in mm
 * @param angleDeg       counter-clockwise from x
 * @param lengthMm       diameter, side, longer side, overall length, across flats
 * @param widthMm        shorter side, width of a slot, over the flat or flats; not used by forms of one size
 * @param cornerRadiusMm of a rectangle; 0 where sharp
 */
public record Hole(Form form, Point center, double angleDeg, double lengthMm, double widthMm, double cornerRadiusMm) {

    /** Forms of openings given by sizes. */
    public enum Form {
        ROUND, SQUARE, RECTANGLE, OBROUND, SINGLE_FLAT, DOUBLE_FLAT, HEXAGON, TRIANGLE
    }

    public static Hole round(double x, double y, double diameterMm) {
        return new Hole(Form.ROUND, new Point(x, y), 0, diameterMm, diameterMm, 0);
    }

    public static Hole obround(double x, double y, double angleDeg, double lengthMm, double widthMm) {
        return new Hole(Form.OBROUND, new Point(x, y), angleDeg, lengthMm, widthMm, widthMm / 2);
    }

    public static Hole rectangle(double x, double y, double angleDeg, double lengthMm, double widthMm, double cornerRadiusMm) {
        return new Hole(Form.RECTANGLE, new Point(x, y), angleDeg, lengthMm, widthMm, cornerRadiusMm);
    }

    public Hole at(Point newCenter) {
        return new Hole(form, newCenter, angleDeg, lengthMm, widthMm, cornerRadiusMm);
    }

    /** The contour in place; null when the sizes do not make one. */
    Contour contour() {
        Contour own = switch (form) {
            case ROUND -> Openings.round(lengthMm);
            case SQUARE -> Openings.rectangle(lengthMm, lengthMm, cornerRadiusMm);
            case RECTANGLE -> Openings.rectangle(lengthMm, widthMm, cornerRadiusMm);
            case OBROUND -> lengthMm > widthMm ? Openings.rectangle(lengthMm, widthMm, widthMm / 2) : null;
            case SINGLE_FLAT -> Openings.singleFlat(lengthMm, widthMm);
            case DOUBLE_FLAT -> Openings.doubleFlat(lengthMm, widthMm);
            case HEXAGON -> Openings.hexagon(lengthMm);
            case TRIANGLE -> Openings.triangle(lengthMm);
        };
        return own == null ? null : own.moved(Pose.at(center.x(), center.y(), angleDeg));
    }
}
