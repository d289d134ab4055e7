// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import java.util.List;

import punchwright.engine.finding.Finding;

/**
 * Clearance between punch and die. Per side means u, total means 2u (difference of the diameters); a hole takes its size from
 * the punch, a blank from the die (Europa-Lehrmittel, Werkzeugbau; Groover).
 *
 * <p>Symbols: t [mm], tau [MPa], c 0.005 (clean edge) to 0.035 (least force), a allowance, p per cent. Three rules:
 * <ul>
 * <li>Oehler/Kaiser, Schnitt-, Stanz- und Ziehwerkzeuge (from memory): {@code u = c t sqrt(tau/10)} up to 3 mm, above it
 * {@code u = (1.5 c t - 0.015) sqrt(tau/10)}. The branches meet at 3 mm for c = 0.01 only. t 2, tau 320: 0.1131 mm.
 * <li>Groover after ASM/SME (from memory): {@code u = a t}, a 0.045 soft aluminium, 0.060 brass, mild steel and soft stainless,
 * 0.075 half-hard steel and hard stainless. a 0.075, t 3.2: 0.24 mm.
 * <li>Per cent of the thickness in all, kept by the shop: {@code 2u = p t / 100}. 20 %, t 2: 0.40 mm in all.
 * </ul>
 * The material says which one is used. Range: t 0.4 to 8 mm. Warning: the first two are press-tool values; shops that punch on
 * CNC presses take wider dies ({@link ClearanceCustom}) for tool life and stripping.
 */
public final class DieClearance {

    /** c of the usual compromise. */
    public static final double USUAL_C = 0.01;

    private DieClearance() {
    }

    /** Oehler/Kaiser, mm per side. */
    public static double oehlerKaiserPerSideMm(double c, double thicknessMm, double shearMPa) {
        double root = Math.sqrt(shearMPa / 10);
        return thicknessMm <= 3 ? c * thicknessMm * root : (1.5 * c * thicknessMm - 0.015) * root;
    }

    /** Allowance method, mm per side. */
    public static double allowancePerSideMm(double allowance, double thicknessMm) {
        return allowance * thicknessMm;
    }

    /** Allowance by group; copper has no row of its own and takes that of brass. */
    public static double allowance(MaterialGroup group) {
        return switch (group) {
            case ALUMINIUM -> 0.045;
            case MILD_STEEL, COATED_STEEL, BRASS, COPPER -> 0.060;
            case STAINLESS_STEEL, HIGH_STRENGTH_STEEL -> 0.075;
        };
    }

    /** Per cent of thickness, mm in all. */
    public static double percentTotalMm(double percent, double thicknessMm) {
        return percent / 100 * thicknessMm;
    }

    /** Total clearance by one rule, mm. */
    public static double totalMm(ClearanceRule rule, Material material, double thicknessMm) {
        return switch (rule) {
            case OEHLER_KAISER -> 2 * oehlerKaiserPerSideMm(USUAL_C, thicknessMm, material.shearMPa());
            case ALLOWANCE -> 2 * allowancePerSideMm(allowance(material.group()), thicknessMm);
            case PERCENT -> percentTotalMm(material.clearancePercent(), thicknessMm);
        };
    }

    /** Total clearance by the rule the material chose, mm. */
    public static double totalMm(Material material, double thicknessMm) {
        return totalMm(material.clearanceRule(), material, thicknessMm);
    }

    /** The clearance on hand nearest to the need; of two equally near the wider. NaN when there is none. */
    public static double nearestMm(List<Double> onHandMm, double needMm) {
        double best = Double.NaN;
        for (double c : onHandMm) {
            double better = Math.abs(c - needMm) - Math.abs(best - needMm);
            if (Double.isNaN(best) || better < -1e-9 || Math.abs(better) <= 1e-9 && c > best) {
                best = c;
            }
        }
        return best;
    }

    /** Die of a hole: its size and both clearances, {@code d + 2u} in mm. Example: hole 20, u 0.12: 20.24. */
    public static double dieOfHoleMm(double holeMm, double perSideMm) {
        return holeMm + 2 * perSideMm;
    }

    /** Punch of a blank: its size less both clearances, {@code d - 2u} in mm. Example: blank 150, u 0.24: 149.52. */
    public static double punchOfBlankMm(double blankMm, double perSideMm) {
        return blankMm - 2 * perSideMm;
    }

    /**
     * Widening of the die below its land, mm per side: {@code depth tan(relief)}; relief 0.25 to 1.5 degrees (University of
     * Illinois, Mechanics Reference, sheet metal). Example: 1 degree over 10 mm: 0.1746.
     */
    public static double reliefPerSideMm(double depthMm, double reliefDeg) {
        return depthMm * Math.tan(Math.toRadians(reliefDeg));
    }

    /**
     * What being off means: nothing within 20 %, else a note. Tight dies give more burnish and less life, wide ones more
     * rollover and burr; {@link EdgeQuality} has the measured figures.
     */
    public static List<Finding> effect(String subject, double clearanceMm, double needMm) {
        double percent = 100 * clearanceMm / needMm;
        if (percent < 80) {
            return List.of(Finding.of(PressReason.CLEARANCE_TIGHT, subject, clearanceMm, needMm, percent));
        }
        return percent > 120 ? List.of(Finding.of(PressReason.CLEARANCE_WIDE, subject, clearanceMm, needMm, percent)) : List.of();
    }
}
