// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting.shapes;

import punchwright.engine.nesting.boxes.Work;

/** How far one group of outlines must be shifted along an axis to be clear of another, seen from outside. */
final class Contact {

    private static final int STEPS = 48;

    private final Overlap test = new Overlap();
    private final Work work;
    private final double precision;

    Contact(Work work, double precision) {
        this.work = work;
        this.precision = precision;
    }

    /** Whether no outline of {@code a}, shifted by (dx, dy), overlaps one of {@code b}. */
    boolean clear(Cluster a, Cluster b, double dx, double dy) {
        for (int i = 0; i < a.size(); i++) {
            for (int j = 0; j < b.size(); j++) {
                work.add(1 + (a.outline(i).ax.length + b.outline(j).ax.length) / 64);
                if (test.of(a.outline(i), a.x(i) + dx, a.y(i) + dy, b.outline(j), b.x(j), b.y(j), 1, 1, 0) > 0) {
                    return false;
                }
            }
        }
        return true;
    }

    /**
     * The least shift t, not below {@code least}, so that {@code a} at (dx + t ux, dy + t uy) is clear of {@code b} there and at
     * every larger shift; (ux, uy) has length 1.
     */
    double outermost(Cluster a, Cluster b, double dx, double dy, double ux, double uy, double least) {
        double far = Math.min(apart(a.minX() + dx, a.maxX() + dx, b.minX(), b.maxX(), ux),
                apart(a.minY() + dy, a.maxY() + dy, b.minY(), b.maxY(), uy));
        if (far <= least + precision) {
            return Math.max(far, least);
        }
        double step = (far - least) / STEPS;
        double free = far;
        double hit = far;
        while (hit >= least - 1e-12 && clear(a, b, dx + hit * ux, dy + hit * uy)) {
            free = hit;
            hit -= step;
        }
        if (hit < least) {
            return clear(a, b, dx + least * ux, dy + least * uy) ? least : bisect(a, b, dx, dy, ux, uy, least, free);
        }
        return bisect(a, b, dx, dy, ux, uy, hit, free);
    }

    /** The shift from which on two boxes are apart along one axis. */
    private static double apart(double aMin, double aMax, double bMin, double bMax, double u) {
        return Math.abs(u) < 1e-9 ? Double.POSITIVE_INFINITY : u > 0 ? (bMax - aMin) / u : (bMin - aMax) / u;
    }

    private double bisect(Cluster a, Cluster b, double dx, double dy, double ux, double uy, double from, double to) {
        double hit = from;
        double free = to;
        while (free - hit > precision) {
            double middle = (free + hit) / 2;
            if (clear(a, b, dx + middle * ux, dy + middle * uy)) {
                free = middle;
            } else {
                hit = middle;
            }
        }
        return free;
    }
}
