// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.geometry;

/**
 * A circular arc.
 *
 * @param center   mm
 * @param radiusMm above 0
 * @param startRad direction from the centre to the start
 * @param sweepRad signed angle travelled, positive counter-clockwise, at most a full turn (2 pi) either way
 */
public record Arc(Point center, double radiusMm, double startRad, double sweepRad) implements Segment {

    private static final double FULL = 2 * Math.PI;

    /** A full circle, counter-clockwise, starting at angle 0. */
    public static Arc circle(Point center, double radiusMm) {
        return new Arc(center, radiusMm, 0, FULL);
    }

    /**
     * The arc between two points with the DXF bulge (tangent of a quarter of the included angle, positive
     * counter-clockwise, not 0).
     */
    public static Arc ofBulge(Point from, Point to, double bulge) {
        Point chord = to.minus(from);
        double sweep = 4 * Math.atan(bulge);
        Point center = from.plus(chord.times(0.5)).plus(chord.left().times((1 - bulge * bulge) / (4 * bulge)));
        return new Arc(center, center.distance(from), from.minus(center).angleRad(), sweep);
    }

    public boolean isFullCircle() {
        return Math.abs(Math.abs(sweepRad) - FULL) < 1e-9;
    }

    @Override
    public Point start() {
        return center.plus(Point.polar(radiusMm, startRad));
    }

    @Override
    public Point end() {
        return center.plus(Point.polar(radiusMm, startRad + sweepRad));
    }

    @Override
    public double lengthMm() {
        return radiusMm * Math.abs(sweepRad);
    }

    @Override
    public Point pointAt(double t) {
        return center.plus(Point.polar(radiusMm, startRad + t * sweepRad));
    }

    @Override
    public Point tangentAt(double t) {
        return Point.polar(1, startRad + t * sweepRad).left().times(Math.signum(sweepRad));
    }

    @Override
    public Arc reversed() {
        return new Arc(center, radiusMm, startRad + sweepRad, -sweepRad);
    }

    @Override
    public Arc moved(Pose pose) {
        double turn = Math.toRadians(pose.angleDeg());
        return pose.mirrored() ? new Arc(pose.apply(center), radiusMm, Math.PI - startRad + turn, -sweepRad)
                : new Arc(pose.apply(center), radiusMm, startRad + turn, sweepRad);
    }

    @Override
    public Bounds bounds() {
        if (Math.abs(sweepRad) >= FULL) {
            return new Bounds(center.x() - radiusMm, center.y() - radiusMm, center.x() + radiusMm, center.y() + radiusMm);
        }
        Bounds b = Bounds.EMPTY.including(start()).including(end());
        for (int quarter = 0; quarter < 4; quarter++) {
            if (spans(quarter * Math.PI / 2)) {
                b = b.including(center.plus(Point.polar(radiusMm, quarter * Math.PI / 2)));
            }
        }
        return b;
    }

    /** Whether the direction {@code angleRad} from the centre lies on the arc. */
    public boolean spans(double angleRad) {
        return travelTo(angleRad) <= Math.abs(sweepRad);
    }

    @Override
    public Arc part(double from, double to) {
        return new Arc(center, radiusMm, startRad + from * sweepRad, (to - from) * sweepRad);
    }

    @Override
    public double shareNearest(Point p) {
        double along = travelTo(p.minus(center).angleRad());
        double sweep = Math.abs(sweepRad);
        return along <= sweep ? along / sweep : p.distance(start()) <= p.distance(end()) ? 0 : 1;
    }

    /** Angle travelled from the start until a direction from the centre is reached, 0 to below a full turn. */
    private double travelTo(double angleRad) {
        double a = (sweepRad >= 0 ? angleRad - startRad : startRad - angleRad) % FULL;
        return a < 0 ? a + FULL : a;
    }

    @Override
    public double distance(Point p) {
        Point d = p.minus(center);
        if (d.norm() > 0 && spans(d.angleRad())) {
            return Math.abs(d.norm() - radiusMm);
        }
        return Math.min(p.distance(start()), p.distance(end()));
    }

    @Override
    public double doubleAreaFrom(Point origin) {
        return radiusMm * radiusMm * (sweepRad - Math.sin(sweepRad)) + start().minus(origin).cross(end().minus(origin));
    }
}
