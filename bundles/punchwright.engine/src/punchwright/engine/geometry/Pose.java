// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.geometry;

/**
 * Where a rigid object sits: first mirrored about its y axis when {@code mirrored}, then turned by {@code angleDeg}
 * (counter-clockwise), then shifted by (x, y) mm.
 */
public record Pose(double x, double y, double angleDeg, boolean mirrored) {

    public static final Pose IDENTITY = new Pose(0, 0, 0, false);

    public static Pose at(double x, double y, double angleDeg) {
        return new Pose(x, y, angleDeg, false);
    }

    /** The point in the outer frame; exact for multiples of 90 degrees. */
    public Point apply(Point p) {
        double px = mirrored ? -p.x() : p.x();
        double c = Angles.cosDeg(angleDeg);
        double s = Angles.sinDeg(angleDeg);
        return new Point(c * px - s * p.y() + x, s * px + c * p.y() + y);
    }

    /** An angle of the object as seen in the outer frame, in degrees from 0 to below 360. */
    public double applyAngleDeg(double ownAngleDeg) {
        return Angles.normalizeDeg(mirrored ? 180 - ownAngleDeg + angleDeg : ownAngleDeg + angleDeg);
    }
}
