// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.geometry;

/** A point or vector in the plane, in mm. */
public record Point(double x, double y) {

    public static final Point ORIGIN = new Point(0, 0);

    /** The point at {@code radiusMm} from the origin in direction {@code angleRad}. */
    public static Point polar(double radiusMm, double angleRad) {
        return new Point(radiusMm * Math.cos(angleRad), radiusMm * Math.sin(angleRad));
    }

    public Point plus(Point other) {
        return new Point(x + other.x, y + other.y);
    }

    public Point minus(Point other) {
        return new Point(x - other.x, y - other.y);
    }

    public Point times(double factor) {
        return new Point(x * factor, y * factor);
    }

    /** Length of the vector in mm. */
    public double norm() {
        return Math.sqrt(x * x + y * y);
    }

    public double distance(Point other) {
        double dx = x - other.x;
        double dy = y - other.y;
        return Math.sqrt(dx * dx + dy * dy);
    }

    public double dot(Point other) {
        return x * other.x + y * other.y;
    }

    /** z of the cross product; positive when {@code other} lies to the left. */
    public double cross(Point other) {
        return x * other.y - y * other.x;
    }

    /** The same direction with length one; the zero vector stays. */
    public Point unit() {
        double n = norm();
        return n == 0 ? this : times(1 / n);
    }

    /** The vector turned left by a right angle. */
    public Point left() {
        return new Point(-y, x);
    }

    public Point rotated(double angleRad) {
        double c = Math.cos(angleRad);
        double s = Math.sin(angleRad);
        return new Point(c * x - s * y, s * x + c * y);
    }

    /** Direction of the vector in radians, -pi to pi. */
    public double angleRad() {
        return Math.atan2(y, x);
    }
}
