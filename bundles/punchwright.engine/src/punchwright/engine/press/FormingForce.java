// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

/**
 * Force of forming tools, for choosing a place; the first piece tells the truth.
 *
 * <p>Symbols: L length of the formed or cut line [mm], t [mm], tau and Rm [MPa], A coined area [mm2], D mean collar diameter,
 * d0 core hole [mm]; force in N. Formulas: louvre and lance {@code 1.4 L t tau} (cut, and 0.3 to 0.5 of it for the form);
 * emboss {@code 0.75 L t Rm} (0.5 to 1); coining such as countersinks and marks {@code 2 A Rm} (1.8 to 3); all common practice,
 * no source. Collar {@code 1.1 pi t Rm (D - d0)} (Lange, Umformtechnik, flanging, from memory). Range: sheet up to about 4 mm;
 * scatter 50 per cent either way. Worked example: coining 50 mm2 at Rm 400: 40 kN.
 */
public final class FormingForce {

    private FormingForce() {
    }

    public static double lanceN(double cutLengthMm, double thicknessMm, double shearMPa) {
        return 1.4 * cutLengthMm * thicknessMm * shearMPa;
    }

    public static double embossN(double lengthMm, double thicknessMm, double tensileMPa) {
        return 0.75 * lengthMm * thicknessMm * tensileMPa;
    }

    public static double coiningN(double areaMm2, double tensileMPa) {
        return 2 * areaMm2 * tensileMPa;
    }

    public static double collarN(double meanDiameterMm, double coreDiameterMm, double thicknessMm, double tensileMPa) {
        return 1.1 * Math.PI * thicknessMm * tensileMPa * (meanDiameterMm - coreDiameterMm);
    }
}
