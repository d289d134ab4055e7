// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

/** Lengths as integers of 0.0001 mm (0.1 micrometre); the largest length is 200 m. */
final class Ticks {

    static final double PER_MM = 10_000;

    private Ticks() {
    }

    /** Nearest tick; lengths below zero count as zero. */
    static int of(double mm) {
        return (int) Math.round(Math.max(0, Math.min(mm, 200_000)) * PER_MM);
    }

    static double mm(int ticks) {
        return ticks / PER_MM;
    }
}
