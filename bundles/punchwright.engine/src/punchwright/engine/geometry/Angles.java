// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.geometry;

/** Angles in degrees, exact at multiples of 90. */
public final class Angles {

    private Angles() {
    }

    /** From 0 (included) to 360 (excluded). */
    public static double normalizeDeg(double deg) {
        double d = deg % 360;
        return d < 0 ? (d + 360) % 360 : d + 0.0;
    }

    /** Cosine of an angle in degrees; exactly 0, 1, -1 at multiples of 90. */
    public static double cosDeg(double deg) {
        double d = normalizeDeg(deg);
        if (d % 90 == 0) {
            return d == 0 ? 1 : d == 180 ? -1 : 0;
        }
        return Math.cos(Math.toRadians(d));
    }

    /** Sine of an angle in degrees; exactly 0, 1, -1 at multiples of 90. */
    public static double sinDeg(double deg) {
        return cosDeg(deg - 90);
    }
}
