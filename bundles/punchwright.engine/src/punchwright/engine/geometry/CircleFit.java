// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.geometry;

import java.util.List;

/**
 * The circle nearest to points: the algebraic solution (I. Kasa, IEEE Trans. Instrum. Meas. 25 (1976) 8) as start, then
 * Gauss-Newton steps on the true distances.
 */
public record CircleFit(Point center, double radiusMm) {

    private static final int STEPS = 3;

    /** Null for fewer than three points, and when they lie on a line. */
    public static CircleFit of(List<Point> points) {
        if (points.size() < 3) {
            return null;
        }
        Point mean = mean(points);
        CircleFit fit = algebraic(points, mean);
        for (int i = 0; i < STEPS && fit != null; i++) {
            fit = fit.improved(points);
        }
        return fit;
    }

    private static Point mean(List<Point> points) {
        Point sum = Point.ORIGIN;
        for (Point p : points) {
            sum = sum.plus(p);
        }
        return sum.times(1.0 / points.size());
    }

    private static CircleFit algebraic(List<Point> points, Point mean) {
        double uu = 0;
        double uv = 0;
        double vv = 0;
        double uq = 0;
        double vq = 0;
        double q = 0;
        for (Point p : points) {
            double u = p.x() - mean.x();
            double v = p.y() - mean.y();
            double s = u * u + v * v;
            uu += u * u;
            uv += u * v;
            vv += v * v;
            uq += u * s;
            vq += v * s;
            q += s;
        }
        double det = uu * vv - uv * uv;
        if (det <= 1e-14 * (uu + vv) * (uu + vv)) {
            return null;
        }
        double x = (uq * vv - vq * uv) / (2 * det);
        double y = (vq * uu - uq * uv) / (2 * det);
        return new CircleFit(new Point(mean.x() + x, mean.y() + y), Math.sqrt(x * x + y * y + q / points.size()));
    }

    /** One Gauss-Newton step for centre and radius: residual = distance from the centre - radius. */
    private CircleFit improved(List<Point> points) {
        double[][] n = new double[3][4];
        for (Point p : points) {
            Point d = p.minus(center);
            double length = d.norm();
            if (length == 0) {
                return this;
            }
            double[] row = {-d.x() / length, -d.y() / length, -1, length - radiusMm};
            for (int i = 0; i < 3; i++) {
                for (int k = 0; k < 4; k++) {
                    n[i][k] += row[i] * row[k];
                }
            }
        }
        double[] step = LinearSolve.solve(n);
        return step == null ? this : new CircleFit(center.minus(new Point(step[0], step[1])), radiusMm - step[2]);
    }

    /** How far a point is from the line of the circle, in mm. */
    public double distance(Point p) {
        return Math.abs(p.distance(center) - radiusMm);
    }
}
