// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.proof;

import java.util.Arrays;

/**
 * The inside of a simple polygon, for free-contour punches.
 *
 * @param x corners
 * @param y corners
 */
record PolygonRegion(double[] x, double[] y) implements Region {

    @Override
    public void clip(double x0, double y0, double x1, double y1, Spans spans) {
        double[] cuts = new double[x.length];
        int n = 0;
        boolean inside = contains(x0, y0);
        for (int i = 0, j = x.length - 1; i < x.length; j = i++) {
            double t = crossing(x0, y0, x1, y1, j, i);
            if (t > 0 && t < 1) {
                cuts[n++] = t;
            }
        }
        Arrays.sort(cuts, 0, n);
        double from = 0;
        for (int i = 0; i <= n; i++) {
            double to = i < n ? cuts[i] : 1;
            if (inside) {
                spans.add(from, to);
            }
            inside = !inside;
            from = to;
        }
    }

    /** Share of the way at which it crosses a side, or -1; the side's lower end belongs to it, its upper end does not. */
    private double crossing(double x0, double y0, double x1, double y1, int a, int b) {
        double dx = x1 - x0;
        double dy = y1 - y0;
        double sa = dx * (y[a] - y0) - dy * (x[a] - x0);
        double sb = dx * (y[b] - y0) - dy * (x[b] - x0);
        if (sa > 0 == sb > 0) {
            return -1;
        }
        double u = sa / (sa - sb);
        double px = x[a] + u * (x[b] - x[a]) - x0;
        double py = y[a] + u * (y[b] - y[a]) - y0;
        return (px * dx + py * dy) / (dx * dx + dy * dy);
    }

    boolean contains(double px, double py) {
        boolean in = false;
        for (int i = 0, j = x.length - 1; i < x.length; j = i++) {
            if (y[i] > py != y[j] > py && px < (x[j] - x[i]) * (py - y[i]) / (y[j] - y[i]) + x[i]) {
                in = !in;
            }
        }
        return in;
    }

    @Override
    public PolygonRegion turned(double cos, double sin) {
        double[] tx = new double[x.length];
        double[] ty = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            tx[i] = cos * x[i] - sin * y[i];
            ty[i] = sin * x[i] + cos * y[i];
        }
        return new PolygonRegion(tx, ty);
    }
}
