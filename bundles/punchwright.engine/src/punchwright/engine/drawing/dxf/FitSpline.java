// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.dxf;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A cubic B-spline through given points, chord-length parameters, with the end directions where stated and natural ends
 * else (C. de Boor, "A Practical Guide to Splines", chapter IV: the tridiagonal system for the slopes). Each span is a
 * cubic Bezier; the knots are triple.
 */
final class FitSpline {

    private FitSpline() {
    }

    static RawSpline through(List<Vec3> given, Vec3 startTangent, Vec3 endTangent) {
        List<Vec3> p = withoutRepeats(given);
        if (p.size() < 2) {
            p = List.of(given.get(0), given.get(given.size() - 1));
        }
        double[] h = chords(p);
        Vec3[] slope = slopes(p, h, startTangent, endTangent);
        List<Vec3> control = new ArrayList<>();
        control.add(p.get(0));
        for (int i = 0; i < h.length; i++) {
            control.add(p.get(i).plus(slope[i].times(h[i] / 3)));
            control.add(p.get(i + 1).minus(slope[i + 1].times(h[i] / 3)));
            control.add(p.get(i + 1));
        }
        double[] weights = new double[control.size()];
        Arrays.fill(weights, 1);
        return new RawSpline(3, knots(h), control, weights);
    }

    private static List<Vec3> withoutRepeats(List<Vec3> given) {
        List<Vec3> p = new ArrayList<>();
        for (Vec3 v : given) {
            if (p.isEmpty() || p.get(p.size() - 1).minus(v).norm() > 0) {
                p.add(v);
            }
        }
        return p;
    }

    private static double[] chords(List<Vec3> p) {
        double[] h = new double[p.size() - 1];
        for (int i = 0; i < h.length; i++) {
            h[i] = p.get(i + 1).minus(p.get(i)).norm();
            h[i] = h[i] == 0 ? 1 : h[i];
        }
        return h;
    }

    private static double[] knots(double[] h) {
        double[] knots = new double[3 * h.length + 5];
        double at = 0;
        int k = 4;
        for (double step : h) {
            at += step;
            Arrays.fill(knots, k, k + 3, at);
            k += 3;
        }
        knots[k] = at;
        return knots;
    }

    /** Thomas algorithm for the slopes at the points. */
    private static Vec3[] slopes(List<Vec3> p, double[] h, Vec3 first, Vec3 last) {
        int n = p.size();
        double[] upper = new double[n];
        Vec3[] right = new Vec3[n];
        Vec3 chord0 = p.get(1).minus(p.get(0)).times(1 / h[0]);
        upper[0] = first == null ? 0.5 : 0;
        right[0] = first == null ? chord0.times(1.5) : first.unit();
        for (int i = 1; i < n - 1; i++) {
            double diagonal = 2 * (h[i - 1] + h[i]) - h[i] * upper[i - 1];
            Vec3 before = p.get(i).minus(p.get(i - 1)).times(3 * h[i] / h[i - 1]);
            Vec3 after = p.get(i + 1).minus(p.get(i)).times(3 * h[i - 1] / h[i]);
            upper[i] = h[i - 1] / diagonal;
            right[i] = before.plus(after).minus(right[i - 1].times(h[i])).times(1 / diagonal);
        }
        Vec3 chordN = p.get(n - 1).minus(p.get(n - 2)).times(1 / h[n - 2]);
        Vec3[] slope = new Vec3[n];
        slope[n - 1] = last != null ? last.unit()
                : chordN.times(1.5).minus(right[n - 2].times(0.5)).times(1 / (1 - 0.5 * upper[n - 2]));
        for (int i = n - 2; i >= 0; i--) {
            slope[i] = right[i].minus(slope[i + 1].times(upper[i]));
        }
        return slope;
    }
}
