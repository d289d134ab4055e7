// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

/**
 * Height of the cusps that a round punch leaves, and the pitch for a permitted height.
 *
 * <p>Symbols: r punch radius [mm], p pitch [mm], h scallop height [mm], R radius of the made arc [mm], theta angle between
 * two hits about the arc's centre [rad]. Straight edge: {@code h = r - sqrt(r^2 - p^2/4)}. Inside arc (opening), path radius
 * {@code m = R - r}: {@code h = R - (m cos(theta/2) + sqrt(r^2 - m^2 sin^2(theta/2)))}. Outside arc (disc),
 * {@code m = R + r}: {@code h = m cos(theta/2) - sqrt(r^2 - m^2 sin^2(theta/2)) - R}. From h, with {@code q = R - h} inside
 * or {@code R + h} outside: {@code cos(theta/2) = (m^2 + q^2 - r^2) / (2 m q)} (law of cosines). Range: p up to 2 r; r up
 * to R inside; 0 &lt; h &lt; r. Both arcs tend to the straight edge as R grows. Source: plane geometry. Worked example: R 50,
 * r 10, 4 degrees: 0.122284 inside, 0.185142 outside.
 */
public final class Scallop {

    private Scallop() {
    }

    public static double straightMm(double r, double pitch) {
        return r - Math.sqrt(r * r - pitch * pitch / 4);
    }

    public static double straightPitchMm(double r, double h) {
        return 2 * Math.sqrt(2 * r * h - h * h);
    }

    public static double insideMm(double arc, double r, double thetaRad) {
        double m = arc - r;
        double side = m * Math.sin(thetaRad / 2);
        return arc - (m * Math.cos(thetaRad / 2) + Math.sqrt(r * r - side * side));
    }

    public static double outsideMm(double arc, double r, double thetaRad) {
        double m = arc + r;
        double side = m * Math.sin(thetaRad / 2);
        return m * Math.cos(thetaRad / 2) - Math.sqrt(r * r - side * side) - arc;
    }

    /** Largest step in rad on an inside arc; a half turn where the punch fills the arc. */
    public static double insideStepRad(double arc, double r, double h) {
        return step(arc - r, arc - h, r);
    }

    /** Largest step in rad on an outside arc. */
    public static double outsideStepRad(double arc, double r, double h) {
        return step(arc + r, arc + h, r);
    }

    private static double step(double m, double q, double r) {
        if (m <= 1e-9 || q <= 1e-9) {
            return Math.PI;
        }
        double cos = (m * m + q * q - r * r) / (2 * m * q);
        return 2 * Math.acos(Math.clamp(cos, 0, 1));
    }
}
