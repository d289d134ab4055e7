// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.dxf;

import punchwright.engine.geometry.Point;

/**
 * One knot span of a plane B-spline, in mm. Values by de Boor's algorithm on homogeneous coordinates; the slope from its
 * last but one level (L. Piegl, W. Tiller, "The NURBS Book", chapters 3 and 4).
 */
final class SplineSpan implements SmoothCurve {

    private final RawSpline spline;
    private final Scaling scaling;
    private final int span;
    private final double from;
    private final double to;

    SplineSpan(RawSpline spline, int span, Scaling scaling) {
        this.spline = spline;
        this.span = span;
        this.scaling = scaling;
        this.from = spline.knots()[span];
        this.to = spline.knots()[span + 1];
    }

    @Override
    public Point at(double t) {
        double[] h = evaluate(t);
        return new Point(h[0] / h[2], h[1] / h[2]);
    }

    @Override
    public Point derivativeAt(double t) {
        double[] h = evaluate(t);
        double x = h[0] / h[2];
        double y = h[1] / h[2];
        return new Point((h[3] - h[5] * x) / h[2], (h[4] - h[5] * y) / h[2]);
    }

    /** x w, y w, w and their derivatives. */
    private double[] evaluate(double t) {
        int p = spline.degree();
        double[] k = spline.knots();
        double u = from + (to - from) * t;
        double[] d = new double[3 * (p + 1)];
        for (int i = 0; i <= p; i++) {
            homogeneous(span - p + i, d, 3 * i);
        }
        double[] out = new double[6];
        for (int level = 1; level <= p; level++) {
            for (int i = p; i >= level; i--) {
                double low = k[span - p + i];
                double high = k[span + 1 + i - level];
                double a = (u - low) / (high - low);
                for (int c = 3 * i; c < 3 * i + 3; c++) {
                    if (level == p) {
                        out[3 + c - 3 * i] = p * (d[c] - d[c - 3]) / (high - low);
                    }
                    d[c] = (1 - a) * d[c - 3] + a * d[c];
                }
            }
        }
        System.arraycopy(d, 3 * p, out, 0, 3);
        return out;
    }

    private void homogeneous(int i, double[] into, int at) {
        double w = spline.weights()[i];
        Vec3 c = spline.control().get(i);
        into[at] = scaling.x(c.x()) * w;
        into[at + 1] = scaling.y(c.y()) * w;
        into[at + 2] = w;
    }
}
