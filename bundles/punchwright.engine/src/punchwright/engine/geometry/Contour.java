// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * A closed chain of segments; the end of each is the start of the next within the chain tolerance. A circle is one
 * full arc. Direction is kept as given; {@link #oriented(boolean)} sets it.
 */
public record Contour(List<Segment> segments) {

    public Contour {
        segments = List.copyOf(segments);
        if (segments.isEmpty()) {
            throw new IllegalArgumentException("a contour needs at least one segment");
        }
    }

    public static Contour circle(Point center, double diameterMm) {
        return new Contour(List.of(Arc.circle(center, diameterMm / 2)));
    }

    /** A polygon through the points, closed. */
    public static Contour polygon(List<Point> points) {
        List<Segment> lines = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            lines.add(new Line(points.get(i), points.get((i + 1) % points.size())));
        }
        return new Contour(lines);
    }

    /** A rectangle, counter-clockwise from its lower left corner. */
    public static Contour rectangle(double x, double y, double lengthMm, double widthMm) {
        return polygon(List.of(new Point(x, y), new Point(x + lengthMm, y), new Point(x + lengthMm, y + widthMm),
                new Point(x, y + widthMm)));
    }

    /** Area in mm2, positive when counter-clockwise; measured from the first point, so that far-off contours stay exact. */
    public double signedAreaMm2() {
        Point o = segments.get(0).start();
        double twice = 0;
        Point at = o;
        for (Segment s : segments) {
            twice += at.minus(o).cross(s.start().minus(o)) + s.doubleAreaFrom(o);
            at = s.end();
        }
        return twice / 2;
    }

    public double areaMm2() {
        return Math.abs(signedAreaMm2());
    }

    public double lengthMm() {
        double sum = 0;
        for (Segment s : segments) {
            sum += s.lengthMm();
        }
        return sum;
    }

    public boolean isCounterClockwise() {
        return signedAreaMm2() > 0;
    }

    public Contour reversed() {
        List<Segment> back = new ArrayList<>();
        for (int i = segments.size() - 1; i >= 0; i--) {
            back.add(segments.get(i).reversed());
        }
        return new Contour(back);
    }

    public Contour oriented(boolean counterClockwise) {
        return isCounterClockwise() == counterClockwise ? this : reversed();
    }

    public Contour moved(Pose pose) {
        return new Contour(segments.stream().map(s -> s.moved(pose)).toList());
    }

    public Bounds bounds() {
        Bounds b = segments.get(0).bounds();
        for (int i = 1; i < segments.size(); i++) {
            b = b.including(segments.get(i).bounds());
        }
        return b;
    }

    /**
     * Diameter in mm when all segments are arcs of one centre and radius, within the tolerance, that go once round;
     * 0 when the contour is no circle.
     */
    public double circleDiameterMm(double toleranceMm) {
        if (!(segments.get(0) instanceof Arc first)) {
            return 0;
        }
        double turn = 0;
        for (Segment s : segments) {
            if (!(s instanceof Arc arc) || arc.center().distance(first.center()) > toleranceMm
                    || Math.abs(arc.radiusMm() - first.radiusMm()) > toleranceMm) {
                return 0;
            }
            turn += arc.sweepRad();
        }
        return Math.abs(Math.abs(turn) - 2 * Math.PI) < 1e-3 ? 2 * first.radiusMm() : 0;
    }

    /** Least distance of a point from the line of the contour, in mm. */
    public double distance(Point p) {
        double least = Double.POSITIVE_INFINITY;
        for (Segment s : segments) {
            least = Math.min(least, s.distance(p));
        }
        return least;
    }

    /** Whether the point lies inside (crossing number of a ray to the right over a fine polygon). */
    public boolean contains(Point p) {
        return bounds().contains(p) && Flattening.contains(Flattening.points(this, 0.001), p);
    }
}
