// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting.boxes;

import java.util.TreeSet;

/**
 * Lower bound on the number of equal bins for boxes of fixed orientation, by dual feasible functions: areas after rounding
 * sides with the functions u(k) and f0(eps), in both directions (Fekete and Schepers, Mathematical Methods of Operations
 * Research 60, 2004). For boxes that may be turned, only the area and pairs of boxes that never share a bin count.
 */
public final class BinBound {

    private BinBound() {
    }

    /** At least this many bins of {@code length} x {@code width}. */
    public static int of(BoxSet boxes, int length, int width) {
        boolean fixed = true;
        double area = 0;
        for (int i = 0; i < boxes.size(); i++) {
            fixed &= boxes.turns(i) == 1;
            area += boxes.area(i);
        }
        int bound = ceil(area / ((double) length * width));
        if (fixed) {
            double[][] x = sides(boxes.lengths(), length);
            double[][] y = sides(boxes.widths(), width);
            for (double[] a : x) {
                for (double[] b : y) {
                    bound = Math.max(bound, ceil(sum(a, b)));
                }
            }
            return bound;
        }
        return Math.max(bound, large(boxes, length, width));
    }

    private static double sum(double[] a, double[] b) {
        double s = 0;
        for (int i = 0; i < a.length; i++) {
            s += a[i] * b[i];
        }
        return s;
    }

    private static int ceil(double v) {
        return (int) Math.ceil(v - 1e-6);
    }

    /** The plain sides as shares of the bin, u(1) to u(5), and f0 for every threshold that matters, at most 60. */
    private static double[][] sides(int[][] side, int whole) {
        int n = side.length;
        TreeSet<Double> eps = new TreeSet<>();
        for (int[] s : side) {
            double share = (double) s[0] / whole;
            eps.add(share <= 0.5 ? share : 1 - share);
        }
        eps.removeIf(e -> e <= 0);
        int step = 1 + eps.size() / 60;
        double[][] out = new double[6 + (eps.size() + step - 1) / step][n];
        int row = 6;
        int k = 0;
        for (double e : eps) {
            if (k++ % step == 0) {
                f0(side, whole, e, out[row++]);
            }
        }
        for (int i = 0; i < n; i++) {
            double share = (double) side[i][0] / whole;
            out[0][i] = share;
            for (int u = 1; u <= 5; u++) {
                double scaled = share * (u + 1);
                out[u][i] = Math.abs(scaled - Math.rint(scaled)) < 1e-12 ? share : Math.floor(scaled) / u;
            }
        }
        return out;
    }

    private static void f0(int[][] side, int whole, double eps, double[] out) {
        for (int i = 0; i < out.length; i++) {
            double share = (double) side[i][0] / whole;
            out[i] = share > 1 - eps + 1e-12 ? 1 : share < eps - 1e-12 ? 0 : share;
        }
    }

    /** Boxes larger than half the bin in both directions at every turn never share a bin. */
    private static int large(BoxSet boxes, int length, int width) {
        int count = 0;
        for (int i = 0; i < boxes.size(); i++) {
            boolean all = true;
            for (int t = 0; t < boxes.turns(i); t++) {
                all &= 2L * boxes.lengths()[i][t] > length && 2L * boxes.widths()[i][t] > width;
            }
            count += all ? 1 : 0;
        }
        return count;
    }
}
