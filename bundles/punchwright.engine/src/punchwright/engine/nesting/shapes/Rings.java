// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting.shapes;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A polygon as closed rings of points: the outer one counter-clockwise, holes clockwise. Immutable.
 *
 * @param xs x of the points of each ring
 * @param ys y of the points of each ring
 */
record Rings(double[][] xs, double[][] ys) {

    /** Rings oriented as said, points that repeat the one before dropped. */
    static Rings of(List<double[][]> rings) {
        double[][] xs = new double[rings.size()][];
        double[][] ys = new double[rings.size()][];
        for (int r = 0; r < rings.size(); r++) {
            double[][] points = distinct(rings.get(r));
            boolean left = doubleArea(points) > 0;
            int n = points.length;
            xs[r] = new double[n];
            ys[r] = new double[n];
            for (int i = 0; i < n; i++) {
                double[] p = points[left == (r == 0) ? i : n - 1 - i];
                xs[r][i] = p[0];
                ys[r][i] = p[1];
            }
        }
        return new Rings(xs, ys);
    }

    private static double[][] distinct(double[][] points) {
        List<double[]> out = new ArrayList<>();
        for (int i = 0; i < points.length; i++) {
            double[] before = points[(i + points.length - 1) % points.length];
            if (points[i][0] != before[0] || points[i][1] != before[1]) {
                out.add(points[i]);
            }
        }
        return out.toArray(double[][]::new);
    }

    private static double doubleArea(double[][] p) {
        double a = 0;
        for (int i = 0; i < p.length; i++) {
            double[] q = p[(i + 1) % p.length];
            a += p[i][0] * q[1] - q[0] * p[i][1];
        }
        return a;
    }

    double area() {
        double a = 0;
        for (int r = 0; r < xs.length; r++) {
            for (int i = 0, j = xs[r].length - 1; i < xs[r].length; j = i++) {
                a += xs[r][j] * ys[r][i] - xs[r][i] * ys[r][j];
            }
        }
        return a / 2;
    }

    double minX() {
        return Arrays.stream(xs[0]).min().orElseThrow();
    }

    double maxX() {
        return Arrays.stream(xs[0]).max().orElseThrow();
    }

    double minY() {
        return Arrays.stream(ys[0]).min().orElseThrow();
    }

    double maxY() {
        return Arrays.stream(ys[0]).max().orElseThrow();
    }

    /** Distance to the nearest edge, negative outside. */
    double signedDistance(double x, double y) {
        double least = Double.POSITIVE_INFINITY;
        boolean inside = false;
        for (int r = 0; r < xs.length; r++) {
            double[] px = xs[r];
            double[] py = ys[r];
            for (int i = 0, j = px.length - 1; i < px.length; j = i++) {
                least = Math.min(least, distance2(x, y, px[j], py[j], px[i], py[i]));
                if (py[i] > y != py[j] > y && x < (px[j] - px[i]) * (y - py[i]) / (py[j] - py[i]) + px[i]) {
                    inside = !inside;
                }
            }
        }
        return inside ? Math.sqrt(least) : -Math.sqrt(least);
    }

    private static double distance2(double x, double y, double ax, double ay, double bx, double by) {
        double dx = bx - ax;
        double dy = by - ay;
        double t = Math.max(0, Math.min(1, ((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy)));
        double ex = ax + t * dx - x;
        double ey = ay + t * dy - y;
        return ex * ex + ey * ey;
    }

    /** Turned by an angle whose cosine and sine are given, about the origin. */
    Rings turned(double cos, double sin) {
        double[][] tx = new double[xs.length][];
        double[][] ty = new double[xs.length][];
        for (int r = 0; r < xs.length; r++) {
            tx[r] = new double[xs[r].length];
            ty[r] = new double[xs[r].length];
            for (int i = 0; i < xs[r].length; i++) {
                tx[r][i] = cos * xs[r][i] - sin * ys[r][i];
                ty[r][i] = sin * xs[r][i] + cos * ys[r][i];
            }
        }
        return new Rings(tx, ty);
    }

    /** Every point moved into the material by about {@code mm}, along the mean of its two edges' normals. */
    Rings inset(double mm) {
        double[][] ox = new double[xs.length][];
        double[][] oy = new double[xs.length][];
        for (int r = 0; r < xs.length; r++) {
            int n = xs[r].length;
            ox[r] = new double[n];
            oy[r] = new double[n];
            for (int i = 0; i < n; i++) {
                insetPoint(r, i, n, mm, ox[r], oy[r]);
            }
        }
        return new Rings(ox, oy);
    }

    private void insetPoint(int r, int i, int n, double mm, double[] ox, double[] oy) {
        int before = (i + n - 1) % n;
        int after = (i + 1) % n;
        double ax = xs[r][i] - xs[r][before];
        double ay = ys[r][i] - ys[r][before];
        double bx = xs[r][after] - xs[r][i];
        double by = ys[r][after] - ys[r][i];
        double la = Math.hypot(ax, ay);
        double lb = Math.hypot(bx, by);
        double nx = -ay / la - by / lb;
        double ny = ax / la + bx / lb;
        double scale = mm * 2 / Math.max(0.25, nx * nx + ny * ny);
        ox[i] = xs[r][i] + nx * scale;
        oy[i] = ys[r][i] + ny * scale;
    }

    /** Area of the convex hull (monotone chain). */
    double hullArea() {
        Integer[] order = new Integer[xs[0].length];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, (a, b) -> xs[0][a] != xs[0][b] ? Double.compare(xs[0][a], xs[0][b])
                : Double.compare(ys[0][a], ys[0][b]));
        List<double[]> hull = new ArrayList<>();
        for (int pass = 0; pass < 2; pass++) {
            int start = hull.size();
            for (int k = 0; k < order.length; k++) {
                int i = order[pass == 0 ? k : order.length - 1 - k];
                double[] p = {xs[0][i], ys[0][i]};
                while (hull.size() >= start + 2 && cross(hull.get(hull.size() - 2), hull.get(hull.size() - 1), p) <= 0) {
                    hull.remove(hull.size() - 1);
                }
                hull.add(p);
            }
            hull.remove(hull.size() - 1);
        }
        return doubleArea(hull.toArray(double[][]::new)) / 2;
    }

    private static double cross(double[] o, double[] a, double[] b) {
        return (a[0] - o[0]) * (b[1] - o[1]) - (a[1] - o[1]) * (b[0] - o[0]);
    }
}
