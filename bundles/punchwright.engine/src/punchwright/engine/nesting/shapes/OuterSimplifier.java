// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting.shapes;

import java.util.ArrayList;
import java.util.List;

/**
 * Fewer corners for a polygon that only ever grows: a hollow corner is left out, or a short edge gives way to the corner in which
 * its neighbours meet. No side moves out by more than a tolerance, so that a web that the result keeps is kept by the polygon.
 */
public final class OuterSimplifier {

    private static final int LEVELS = 4;

    private final List<double[]> points = new ArrayList<>();
    /** How far the side after each point has moved out already. */
    private final List<Double> moved = new ArrayList<>();

    private OuterSimplifier(double[][] ring) {
        for (double[] p : ring) {
            points.add(p);
            moved.add(0.0);
        }
    }

    /**
     * A polygon around the given one.
     *
     * @param ring      corners, counter-clockwise, material inside; a hole clockwise, material outside
     * @param tolerance largest distance that a side moves
     * @return corners in the same order; the ring itself where nothing can be left out
     */
    public static double[][] of(double[][] ring, double tolerance) {
        OuterSimplifier s = new OuterSimplifier(ring);
        for (int level = LEVELS - 1; level >= 0; level--) {
            s.pass(tolerance / (1 << level));
        }
        return s.points.toArray(double[][]::new);
    }

    private void pass(double tolerance) {
        boolean again = true;
        while (again) {
            again = false;
            for (int i = 0; i < points.size() && points.size() > 3; i++) {
                boolean done = dropHollow(i, tolerance) || points.size() > 4 && mergeEdge(i, tolerance);
                again |= done;
                i -= done ? 1 : 0;
            }
        }
    }

    private double[] at(int i) {
        return points.get(Math.floorMod(i, points.size()));
    }

    private double moved(int i) {
        return moved.get(Math.floorMod(i, points.size()));
    }

    private boolean dropHollow(int i, double tolerance) {
        double[] a = at(i - 1);
        double[] b = at(i);
        double[] c = at(i + 1);
        double turn = cross(a, b, c);
        double side = Math.hypot(c[0] - a[0], c[1] - a[1]);
        double depth = side > 0 ? -turn / side : Double.POSITIVE_INFINITY;
        double total = depth + Math.max(moved(i - 1), moved(i));
        if (turn > 0 || total > tolerance || side == 0 || blocked(a, c, b)) {
            return false;
        }
        moved.set(Math.floorMod(i - 1, points.size()), total);
        points.remove(i);
        moved.remove(i);
        return true;
    }

    /** Puts the corner of the neighbours in place of the edge from point i to the next. */
    private boolean mergeEdge(int i, double tolerance) {
        double[] a = at(i - 1);
        double[] b = at(i);
        double[] c = at(i + 1);
        double[] d = at(i + 2);
        if (cross(a, b, c) <= 0 || cross(b, c, d) <= 0) {
            return false;
        }
        double ux = b[0] - a[0];
        double uy = b[1] - a[1];
        double vx = d[0] - c[0];
        double vy = d[1] - c[1];
        double det = ux * vy - uy * vx;
        if (det <= 1e-12 * Math.hypot(ux, uy) * Math.hypot(vx, vy)) {
            return false;
        }
        double t = ((c[0] - a[0]) * vy - (c[1] - a[1]) * vx) / det;
        double[] q = {a[0] + t * ux, a[1] + t * uy};
        double height = cross(b, q, c) / Math.hypot(c[0] - b[0], c[1] - b[1]);
        double total = Math.abs(height) + moved(i);
        if (t < 1 || total > tolerance || blocked(b, q, c)) {
            return false;
        }
        int next = Math.floorMod(i + 1, points.size());
        points.set(i, q);
        moved.set(i, Math.max(total, moved(i + 1)));
        moved.set(Math.floorMod(i - 1, points.size()), Math.max(total, moved(i - 1)));
        points.remove(next);
        moved.remove(next);
        return true;
    }

    /** Whether another corner lies in or on the triangle a, b, c, either way round. */
    private boolean blocked(double[] a, double[] b, double[] c) {
        double sign = Math.signum(cross(a, b, c));
        for (double[] p : points) {
            if (p != a && p != b && p != c && sign * cross(a, b, p) >= 0 && sign * cross(b, c, p) >= 0
                    && sign * cross(c, a, p) >= 0) {
                return true;
            }
        }
        return false;
    }

    private static double cross(double[] a, double[] b, double[] c) {
        return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
    }
}
