// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.geometry;

/** One piece of a contour: a straight line or a circular arc, kept exact. Lengths in mm. */
public sealed interface Segment permits Line, Arc {

    Point start();

    Point end();

    double lengthMm();

    /** Point at the share {@code t} of the length, 0 to 1. */
    Point pointAt(double t);

    /** Direction of travel (unit vector) at the share {@code t}. */
    Point tangentAt(double t);

    Segment reversed();

    Segment moved(Pose pose);

    Bounds bounds();

    /** The piece between two shares of the length, {@code from} below {@code to}. */
    Segment part(double from, double to);

    /** Share of the length at which the segment is nearest to the point, 0 to 1. */
    double shareNearest(Point p);

    /** Least distance of a point from the segment in mm. */
    double distance(Point p);

    /** Twice the signed area swept from the origin along this segment (Green's theorem), in mm2. */
    default double sweptDoubleArea() {
        return doubleAreaFrom(Point.ORIGIN);
    }

    /** Twice the signed area swept from the point {@code origin} along this segment, in mm2. */
    double doubleAreaFrom(Point origin);
}
