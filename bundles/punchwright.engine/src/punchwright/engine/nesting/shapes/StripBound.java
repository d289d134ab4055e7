// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting.shapes;

import java.util.Arrays;
import java.util.List;

/**
 * A length below which no strip holds given pieces.
 *
 * <p>At every x the sections of the pieces, as shares of the strip's width, sum to 1 at most. A dual feasible function f keeps
 * that: its sum over the sections stays at most 1 (Fekete and Schepers, Mathematical Programming 91, 2001). So the length is
 * at least the sum over the pieces of the least, over the angles, of the integral of f(section) along x. The plain share gives
 * the area; functions that round large sections up give more where pieces are too wide to lie side by side. The functions here
 * grow with the section, so that the smaller end of a stretch bounds the stretch.
 */
public final class StripBound {

    private static final int STRETCHES = 24;
    private static final double[] THRESHOLDS = {0.02, 0.05, 0.1, 0.15, 0.2, 0.25, 0.3, 1.0 / 3, 0.4, 0.45, 0.5};

    private StripBound() {
    }

    /** At least the area over the width and the length of the longest piece, in the unit of the pieces. */
    public static double of(List<Piece> pieces, double width) {
        int functions = 5 + THRESHOLDS.length;
        double[] sum = new double[functions];
        double bound = 0;
        double area = 0;
        double[] least = new double[functions];
        Piece before = null;
        for (Piece p : pieces) {
            if (p != before) {
                least = least(p, width, functions);
                before = p;
            }
            for (int f = 0; f < functions; f++) {
                sum[f] += least[f];
            }
            area += p.area;
            bound = Math.max(bound, shortest(p, width));
        }
        bound = Math.max(bound, area / width);
        for (double s : sum) {
            bound = Math.max(bound, s);
        }
        return bound;
    }

    private static double shortest(Piece p, double width) {
        return Arrays.stream(p.turns).filter(t -> t.width() <= width).mapToDouble(Outline::length).min().orElse(0);
    }

    private static double[] least(Piece p, double width, int functions) {
        double[] least = new double[functions];
        Arrays.fill(least, Double.POSITIVE_INFINITY);
        for (Outline o : p.turns) {
            if (o.width() <= width) {
                double[] here = integrals(o, width, functions);
                for (int f = 0; f < functions; f++) {
                    least[f] = Math.min(least[f], here[f]);
                }
            }
        }
        return Arrays.stream(least).map(v -> v == Double.POSITIVE_INFINITY ? 0 : v).toArray();
    }

    /** Between corners a section changes linearly; each stretch counts with the smaller of its ends. */
    private static double[] integrals(Outline o, double width, int functions) {
        double[] xs = Arrays.stream(o.ax).sorted().distinct().toArray();
        double[] out = new double[functions];
        for (int k = 0; k + 1 < xs.length; k++) {
            double w = xs[k + 1] - xs[k];
            double left = section(o, xs[k] + 1e-9 * w);
            double right = section(o, xs[k + 1] - 1e-9 * w);
            for (int s = 0; s < STRETCHES; s++) {
                double a = left + (right - left) * s / STRETCHES;
                double b = left + (right - left) * (s + 1) / STRETCHES;
                double share = (Math.min(a, b) - 1e-7 * width) / width;
                for (int f = 0; f < functions; f++) {
                    out[f] += value(f, share) * w / STRETCHES;
                }
            }
        }
        return out;
    }

    private static double section(Outline o, double x) {
        double[] ys = new double[o.ax.length];
        int n = 0;
        for (int i = 0; i < o.ax.length; i++) {
            if (o.ax[i] > x != o.bx[i] > x) {
                ys[n++] = o.ay[i] + (o.by[i] - o.ay[i]) * (x - o.ax[i]) / (o.bx[i] - o.ax[i]);
            }
        }
        Arrays.sort(ys, 0, n);
        double sum = 0;
        for (int i = 0; i + 1 < n; i += 2) {
            sum += ys[i + 1] - ys[i];
        }
        return sum;
    }

    /** u(1) to u(5) below their steps, then f0 of each threshold. */
    private static double value(int f, double share) {
        if (f < 5) {
            int k = f + 1;
            double scaled = share * (k + 1);
            return scaled <= 0 ? 0 : Math.abs(scaled - Math.rint(scaled)) < 1e-6 ? Math.min(share, Math.floor(scaled - 1e-6) / k)
                    : Math.floor(scaled) / k;
        }
        double t = THRESHOLDS[f - 5];
        return share > 1 - t ? 1 : share < t ? 0 : share;
    }
}
