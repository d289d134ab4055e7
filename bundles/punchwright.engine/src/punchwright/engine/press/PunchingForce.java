// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import java.util.List;

import punchwright.engine.finding.Finding;

/**
 * Force to punch sheet.
 *
 * <p>Symbols: L cut length [mm], t thickness [mm], tau shear strength [MPa], F force [N], K share of t at which the sheet breaks,
 * h height of the punch's shear [mm]. Formula: {@code F = L t tau} (DIN 8588 for terms; Hellwig, Semlinger, Spanlose Fertigung:
 * Stanzen; Groover, Fundamentals of Modern Manufacturing, sheet metalworking). With only Rm known, tau is taken as 0.8 Rm
 * (German texts) or 0.7 Rm (American texts). Range: sharp flat punch, whole contour at once, cold sheet, t 0.4 to 8 mm.
 * Warning: worn edges need 15 to 30 % more. Worked example: round 10, t 3, tau 350 gives 32 986.7 N.
 */
public final class PunchingForce {

    /** Largest saving by shear of the punch that is trusted: the force never falls below this share. Common practice. */
    public static final double LEAST_SHEAR_FACTOR = 0.5;
    /** Thickness in mm from which and up to which the formula holds. Common practice, no source. */
    public static final double LEAST_THICKNESS_MM = 0.4;
    public static final double LARGEST_THICKNESS_MM = 8;

    private PunchingForce() {
    }

    /** Flat punch: {@code L t tau} in N. */
    public static double flatN(double cutLengthMm, double thicknessMm, double shearMPa) {
        return cutLengthMm * thicknessMm * shearMPa;
    }

    /** Shear strength from tensile strength: {@code factor Rm}, factor 0.7 or 0.8. */
    public static double shearMPa(double tensileMPa, double factor) {
        return factor * tensileMPa;
    }

    /** Share of the thickness at which the sheet breaks: 0.60 soft aluminium, 0.38 mild steel, 0.24 hard steel (course
     * notes on press tools); the others take the value that saves least, no source. */
    public static double penetration(MaterialGroup group) {
        return switch (group) {
            case MILD_STEEL, COATED_STEEL -> 0.38;
            case HIGH_STRENGTH_STEEL -> 0.24;
            default -> 0.60;
        };
    }

    /**
     * Share of the flat force that a punch with shear of height h needs: {@code K t / (K t + h)} for a closed contour
     * (P. C. Sharma, Production Engineering; from memory), roof or one-sided alike. K penetration, t and h in mm. Not
     * capped. Example: K 0.38, t 2, h 2 gives 0.2754.
     */
    public static double shearFactorByFormula(double penetration, double thicknessMm, double shearHeightMm) {
        return shearHeightMm <= 0 ? 1 : penetration * thicknessMm / (penetration * thicknessMm + shearHeightMm);
    }

    /**
     * The textbook rule for large shear, {@code K t / h} and never above 1 (force times stroke stays the work). Range: h above
     * K t. Example: K 0.38, t 2, h 2 gives 0.38.
     */
    public static double largeShearFactor(double penetration, double thicknessMm, double shearHeightMm) {
        return shearHeightMm <= penetration * thicknessMm ? 1 : penetration * thicknessMm / shearHeightMm;
    }

    /** The first of both, never below {@link #LEAST_SHEAR_FACTOR}. */
    public static double shearFactor(MaterialGroup group, double thicknessMm, double shearHeightMm) {
        return Math.max(LEAST_SHEAR_FACTOR, shearFactorByFormula(penetration(group), thicknessMm, shearHeightMm));
    }

    /**
     * Force of a cut that runs along a straight edge at an angle (one blade inclined): {@code 0.5 t^2 tau / tan(phi)} in N,
     * for edges of at least {@code t / tan(phi)}; never above the flat force. Range: 0.5 to 15 degrees. Source: plane geometry
     * of the triangle in the cut. Example: t 2, tau 300, 3 degrees: 11 449 N.
     */
    public static double inclinedN(double edgeMm, double thicknessMm, double shearMPa, double angleDeg) {
        double inclined = 0.5 * thicknessMm * thicknessMm * shearMPa / Math.tan(Math.toRadians(angleDeg));
        return Math.min(inclined, flatN(edgeMm, thicknessMm, shearMPa));
    }

    /** A warning where the thickness lies outside the formula's range. */
    public static List<Finding> check(String subject, double thicknessMm) {
        return thicknessMm >= LEAST_THICKNESS_MM - 1e-9 && thicknessMm <= LARGEST_THICKNESS_MM + 1e-9 ? List.of()
                : List.of(Finding.of(PressReason.RANGE, subject, "t", thicknessMm, "mm", LEAST_THICKNESS_MM,
                        LARGEST_THICKNESS_MM, "F = L t tau"));
    }
}
