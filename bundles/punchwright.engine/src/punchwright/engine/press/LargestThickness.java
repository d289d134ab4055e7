// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

/**
 * Thickest sheet that a punch can cut.
 *
 * <p>Symbols: F force on hand [N], L cut length [mm], tau [MPa], w factor for worn edges, d diameter or side [mm], sigma
 * permitted compressive stress [MPa]; results in mm. By force {@code t = F / (L tau w)}; by the punch's stress
 * {@code t = d sigma / (4 tau)}. The smaller one and the machine's own limit count. Range: as {@link PunchingForce}, t 0.4 to 8
 * mm. Source: {@code F = L t tau} (University of Illinois, Mechanics Reference) and {@code d = 4 t tau / sigma} (Oehler/Kaiser,
 * from memory), each solved for t. Worked example: F 32 986.7 N, round 10, tau 350: 3.0 mm.
 */
public final class LargestThickness {

    private LargestThickness() {
    }

    public static double byForceMm(double forceN, double cutLengthMm, double shearMPa, double wornFactor) {
        return forceN / (cutLengthMm * shearMPa * wornFactor);
    }

    public static double byStressMm(double diameterMm, double shearMPa, double permittedMPa) {
        return diameterMm * permittedMPa / (4 * shearMPa);
    }
}
