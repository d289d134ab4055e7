// SPDX-License-Identifier: EPL-2.0
package punchwright.synthetic;

import punchwright.engine.geometry.Point;

/** A straight piece from a to b, or an arc from a through m to b; m is null for a straight one. Arcs are below a full turn. */
record Curve(Point a, Point m, Point b) {

    static Curve line(Point a, Point b) {
        return new Curve(a, null, b);
    }

    /** Arc about a centre, angles in radians. */
    static Curve arc(Point center, double radius, double fromRad, double toRad) {
        return new Curve(at(center, radius, fromRad), at(center, radius, (fromRad + toRad) / 2), at(center, radius, toRad));
    }

    static Point at(Point center, double radius, double rad) {
        return new Point(center.x() + radius * Math.cos(rad), center.y() + radius * Math.sin(rad));
    }

    boolean isArc() {
        return m != null;
    }

    Curve reversed() {
        return new Curve(b, m, a);
    }

    /** Centre of the circle through the three points (intersection of two perpendicular bisectors). */
    Point center() {
        double bx = m.x() - a.x();
        double by = m.y() - a.y();
        double cx = b.x() - a.x();
        double cy = b.y() - a.y();
        double d = 2 * (bx * cy - by * cx);
        double bb = bx * bx + by * by;
        double cc = cx * cx + cy * cy;
        return new Point(a.x() + (cy * bb - by * cc) / d, a.y() + (bx * cc - cx * bb) / d);
    }

    double radius() {
        return center().distance(a);
    }

    private double angle(Point p) {
        Point c = center();
        return Math.atan2(p.y() - c.y(), p.x() - c.x());
    }

    /** Signed angle travelled in radians, plus counter-clockwise. */
    double sweepRad() {
        double toMiddle = wrapped(angle(m) - angle(a));
        return toMiddle + wrapped(angle(b) - angle(m));
    }

    private static double wrapped(double rad) {
        return Math.atan2(Math.sin(rad), Math.cos(rad));
    }

    double lengthMm() {
        return isArc() ? radius() * Math.abs(sweepRad()) : a.distance(b);
    }

    Point pointAt(double t) {
        return isArc() ? at(center(), radius(), angle(a) + t * sweepRad())
                : new Point(a.x() + t * (b.x() - a.x()), a.y() + t * (b.y() - a.y()));
    }

    Curve part(double from, double to) {
        return isArc() ? new Curve(pointAt(from), pointAt((from + to) / 2), pointAt(to)) : line(pointAt(from), pointAt(to));
    }

    /** Twice the area between the curve and the origin, signed. */
    double doubleArea() {
        double straight = a.x() * b.y() - a.y() * b.x();
        double r = isArc() ? radius() : 0;
        double s = isArc() ? sweepRad() : 0;
        return straight + r * r * (s - Math.sin(s));
    }
}
