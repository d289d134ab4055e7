// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.geometry;

/** An axis-parallel box in mm; empty when {@code minX > maxX}. */
public record Bounds(double minX, double minY, double maxX, double maxY) {

    public static final Bounds EMPTY = new Bounds(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY,
            Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY);

    public boolean isEmpty() {
        return minX > maxX;
    }

    public double width() {
        return maxX - minX;
    }

    public double height() {
        return maxY - minY;
    }

    public Point center() {
        return new Point((minX + maxX) / 2, (minY + maxY) / 2);
    }

    public Bounds including(Point p) {
        return new Bounds(Math.min(minX, p.x()), Math.min(minY, p.y()), Math.max(maxX, p.x()), Math.max(maxY, p.y()));
    }

    public Bounds including(Bounds o) {
        return new Bounds(Math.min(minX, o.minX), Math.min(minY, o.minY), Math.max(maxX, o.maxX), Math.max(maxY, o.maxY));
    }

    public Bounds grown(double mm) {
        return new Bounds(minX - mm, minY - mm, maxX + mm, maxY + mm);
    }

    public boolean contains(Point p) {
        return p.x() >= minX && p.x() <= maxX && p.y() >= minY && p.y() <= maxY;
    }

    public boolean contains(Bounds o) {
        return o.minX >= minX && o.maxX <= maxX && o.minY >= minY && o.maxY <= maxY;
    }

    public boolean intersects(Bounds o) {
        return o.minX <= maxX && o.maxX >= minX && o.minY <= maxY && o.maxY >= minY;
    }
}
