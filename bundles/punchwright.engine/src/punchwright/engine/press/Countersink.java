// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import java.util.List;

import punchwright.engine.finding.Finding;

/**
 * Countersinks pressed into the sheet.
 *
 * <p>Symbols: D head diameter, d hole, t thickness [mm], alpha angle of the cone [degrees]. Depth
 * {@code (D - d) / (2 tan(alpha / 2))}; at most {@code 0.9 t} so that a land stays (common practice), else a counter-form
 * underneath. What is pressed aside, {@code V = pi h / 12 (D^2 + D d - 2 d^2)} (cone frustum less the hole), closes the hole; a
 * hole punched first of {@code d0 = sqrt(d^2 + 4 V / (pi t))} takes it up over the thickness. Range: alpha 60 to 120 degrees, t
 * 0.8 to 6 mm. Source: solid geometry. Worked example: D 9.2, d 4.5, 90 degrees: 2.35 deep, so t at least 2.62.
 */
public final class Countersink {

    private Countersink() {
    }

    /** Depth in mm. */
    public static double depthMm(double headMm, double holeMm, double coneDeg) {
        return (headMm - holeMm) / (2 * Math.tan(Math.toRadians(coneDeg / 2)));
    }

    /** Thinnest sheet that keeps a land, {@code depth / 0.9} in mm. */
    public static double leastThicknessMm(double depthMm) {
        return depthMm / 0.9;
    }

    /** Volume pressed aside, mm3. */
    public static double volumeMm3(double headMm, double holeMm, double depthMm) {
        return Math.PI * depthMm / 12 * (headMm * headMm + headMm * holeMm - 2 * holeMm * holeMm);
    }

    /** Hole punched first so that the volume finds room, mm. */
    public static double holeBeforeMm(double holeMm, double volumeMm3, double thicknessMm) {
        return Math.sqrt(holeMm * holeMm + 4 * volumeMm3 / (Math.PI * thicknessMm));
    }

    /** A warning where no land stays. */
    public static List<Finding> check(String subject, double depthMm, double thicknessMm) {
        return depthMm <= 0.9 * thicknessMm + 1e-9 ? List.of()
                : List.of(Finding.of(PressReason.COUNTERSINK_DEEP, subject, depthMm, 0.9 * thicknessMm, thicknessMm));
    }
}
