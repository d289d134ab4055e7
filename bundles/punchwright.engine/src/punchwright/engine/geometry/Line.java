// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.geometry;

/** A straight segment in mm. */
public record Line(Point start, Point end) implements Segment {

    @Override
    public double lengthMm() {
        return start.distance(end);
    }

    @Override
    public Point pointAt(double t) {
        return start.plus(end.minus(start).times(t));
    }

    @Override
    public Point tangentAt(double t) {
        return end.minus(start).unit();
    }

    @Override
    public Line reversed() {
        return new Line(end, start);
    }

    @Override
    public Line moved(Pose pose) {
        return new Line(pose.apply(start), pose.apply(end));
    }

    @Override
    public Bounds bounds() {
        return new Bounds(Math.min(start.x(), end.x()), Math.min(start.y(), end.y()), Math.max(start.x(), end.x()),
                Math.max(start.y(), end.y()));
    }

    @Override
    public Line part(double from, double to) {
        return new Line(from == 0 ? start : pointAt(from), to == 1 ? end : pointAt(to));
    }

    @Override
    public double shareNearest(Point p) {
        Point d = end.minus(start);
        double n2 = d.dot(d);
        return n2 == 0 ? 0 : Math.max(0, Math.min(1, p.minus(start).dot(d) / n2));
    }

    @Override
    public double distance(Point p) {
        return p.distance(pointAt(shareNearest(p)));
    }

    @Override
    public double doubleAreaFrom(Point origin) {
        return start.minus(origin).cross(end.minus(origin));
    }
}
