// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

/**
 * Smallest hole or slot width.
 *
 * <p>Two limits: custom {@code d = f t}, never below 1 mm (f kept with the material: about 1.0 mild steel, 0.8 aluminium and
 * copper, 1.5 to 2 stainless; common practice, no source), and the punch's compressive stress {@code d = 4 t tau / sigma}
 * from {@code pi d t tau = sigma pi d^2 / 4} (Oehler/Kaiser; Kalpakjian and Schmid; sigma 1600 MPa tool steel, 2000 high-speed
 * steel, from memory). Symbols: d [mm], t [mm], tau and sigma [MPa]. Range: round and square punches; for others
 * {@link #punchStressMPa}; sigma 800 to 2500 MPa. Worked example: t 2, tau 320, sigma 1500 gives 1.707 mm.
 */
public final class SmallestFeature {

    /** Permitted compressive stress of a tool-steel punch, MPa. From memory. */
    public static final double PERMITTED_STRESS_MPA = 1600;

    private SmallestFeature() {
    }

    /** {@code max(1, f t)} in mm. */
    public static double byCustomMm(Material material, double thicknessMm) {
        return Math.max(1, material.minimumHoleFactor() * thicknessMm);
    }

    /** {@code 4 t tau / sigma} in mm. */
    public static double byStressMm(double thicknessMm, double shearMPa, double permittedMPa) {
        return 4 * thicknessMm * shearMPa / permittedMPa;
    }

    /** Slot width by custom, {@code max(1, 1.2 f t)} in mm: 1.0 to 1.5 times the thickness in mild steel. Common practice. */
    public static double slotByCustomMm(Material material, double thicknessMm) {
        return Math.max(1, 1.2 * material.minimumHoleFactor() * thicknessMm);
    }

    /**
     * Least width of a slot of length l by the punch's stress, {@code 2 l t tau / (sigma l - 2 t tau)} in mm, from
     * {@code 2 (l + w) t tau = sigma l w}; infinite where no width suffices. A square gives {@code 4 t tau / sigma} again, a very
     * long slot {@code 2 t tau / sigma}. Example: l 20, t 2, tau 320, sigma 1600: 0.8333.
     */
    public static double slotByStressMm(double lengthMm, double thicknessMm, double shearMPa, double permittedMPa) {
        double rest = permittedMPa * lengthMm - 2 * thicknessMm * shearMPa;
        return rest <= 0 ? Double.POSITIVE_INFINITY : 2 * lengthMm * thicknessMm * shearMPa / rest;
    }

    /** Preferred least pierced size of the stamping-design articles, {@code 2 t} in mm. */
    public static double preferredMm(double thicknessMm) {
        return 2 * thicknessMm;
    }

    /** Compressive stress of any punch: force over its area, MPa. */
    public static double punchStressMPa(double forceN, double areaMm2) {
        return forceN / areaMm2;
    }

    /**
     * Euler load of a slender round punch in N: {@code pi^2 E I / (k l)^2}, {@code I = pi d^4 / 64}, k 2 free end, 0.7
     * guided. Steel, E 210 000 MPa. Example: d 5, l 40, k 2 gives 9935 N.
     */
    public static double bucklingN(double diameterMm, double freeLengthMm, double endFactor) {
        double inertia = Math.PI * Math.pow(diameterMm, 4) / 64;
        return Math.PI * Math.PI * 210_000 * inertia / Math.pow(endFactor * freeLengthMm, 2);
    }
}
