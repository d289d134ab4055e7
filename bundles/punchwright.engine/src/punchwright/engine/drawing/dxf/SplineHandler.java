// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.dxf;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** SPLINE: control points with knots and weights, or fit points only. */
final class SplineHandler {

    private static final int CLOSED = 1;
    private static final int LARGEST_DEGREE = 15;

    private SplineHandler() {
    }

    static void read(Entity e, EntityTarget target) {
        List<Vec3> control = points(e, 10);
        List<Vec3> fit = points(e, 11);
        boolean closed = (e.integer(70, 0) & CLOSED) != 0;
        if (control.isEmpty() && fit.size() >= 2) {
            target.add(e, List.of(FitSpline.through(fit, e.has(12) ? e.point(12) : null, e.has(13) ? e.point(13) : null)),
                    closed);
            return;
        }
        int degree = e.integer(71, 3);
        String fault = fault(degree, control);
        double[] knots = values(e, 40);
        if (fault == null && knots.length != control.size() + degree + 1) {
            if (knots.length > 0) {
                fault = knots.length + " knots for " + control.size() + " control points of degree " + degree;
            } else {
                knots = clampedKnots(control.size(), degree);
            }
        }
        fault = fault == null ? knotFault(knots) : fault;
        if (fault != null) {
            target.findings().add(DxfReason.BAD_SPLINE, e.place(), fault);
            return;
        }
        target.add(e, List.of(new RawSpline(degree, knots, control, weights(e, control.size()))), closed);
    }

    private static String fault(int degree, List<Vec3> control) {
        if (degree < 1 || degree > LARGEST_DEGREE) {
            return "degree " + degree;
        }
        return control.size() <= degree ? "only " + control.size() + " control points for degree " + degree : null;
    }

    private static String knotFault(double[] knots) {
        for (int i = 1; i < knots.length; i++) {
            if (knots[i] < knots[i - 1]) {
                return "its knots fall";
            }
        }
        return knots[0] < knots[knots.length - 1] ? null : "its knots are all the same";
    }

    private static double[] weights(Entity e, int n) {
        double[] weights = values(e, 41);
        if (weights.length != n || Arrays.stream(weights).anyMatch(w -> w <= 0)) {
            weights = new double[n];
            Arrays.fill(weights, 1);
        }
        return weights;
    }

    private static double[] clampedKnots(int points, int degree) {
        double[] knots = new double[points + degree + 1];
        for (int i = 0; i < knots.length; i++) {
            knots[i] = Math.max(0, Math.min(points - degree, i - degree));
        }
        return knots;
    }

    private static double[] values(Entity e, int code) {
        double[] values = new double[e.size()];
        int n = 0;
        for (int i = 0; i < e.size(); i++) {
            if (e.code(i) == code) {
                values[n++] = e.number(i);
            }
        }
        return Arrays.copyOf(values, n);
    }

    private static List<Vec3> points(Entity e, int code) {
        double[] xs = values(e, code);
        double[] ys = values(e, code + 10);
        double[] zs = values(e, code + 20);
        List<Vec3> points = new ArrayList<>();
        for (int i = 0; i < Math.min(xs.length, ys.length); i++) {
            points.add(new Vec3(xs[i], ys[i], zs.length == xs.length ? zs[i] : 0));
        }
        return points;
    }
}
