// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import java.util.ArrayList;
import java.util.List;

import punchwright.engine.finding.Finding;

/**
 * Collars for threads: hole to punch first, height, and how far the edge may stretch.
 *
 * <p>Symbols, mm: D mean diameter of the collar, H its height with the sheet, r die radius, t thickness, di inner and do outer
 * diameter, d0 hole punched first, P pitch. Without ironing {@code d0 = D - 2 (H - 0.43 r - 0.72 t)} (Lange; Romanowski; from
 * memory). With ironing the volume stays: {@code d0 = sqrt(do^2 - (do^2 - di^2) H / t)} (geometry). Stretch {@code D / d0} at
 * most 1.7 in mild steel and copper, 1.5 in stainless, hard steel and half-hard aluminium (Lange, from memory). Least height
 * {@code 3 P}; highest {@code 2.5 t} (common practice). Die radius where the tool's record has none: 0.5 mm (common practice for
 * thread collars, no source: a small radius leaves more of the height for the thread). Range: t 0.5 to 4 mm, M2.5 to M8. Worked example: D 10, H 4, r 1, t
 * 1.5: d0 5.02, stretch 1.99, too far.
 */
public final class ThreadCollar {

    /** Radius of the die's edge where a record gives none, mm. Common practice, no source. */
    public static final double USUAL_DIE_RADIUS_MM = 0.5;

    private ThreadCollar() {
    }

    /** Hole punched first, without ironing, mm; 0 or less means that no hole is small enough. */
    public static double coreMm(double meanDiameterMm, double heightMm, double radiusMm, double thicknessMm) {
        return meanDiameterMm - 2 * (heightMm - 0.43 * radiusMm - 0.72 * thicknessMm);
    }

    /** Hole punched first, with ironing, mm; 0 where the sheet above the hole does not suffice. */
    public static double ironedCoreMm(double innerMm, double outerMm, double heightMm, double thicknessMm) {
        double square = outerMm * outerMm - (outerMm * outerMm - innerMm * innerMm) * heightMm / thicknessMm;
        return square <= 0 ? 0 : Math.sqrt(square);
    }

    /** {@code D / d0}; infinite without a hole. */
    public static double stretch(double meanDiameterMm, double coreMm) {
        return coreMm <= 0 ? Double.POSITIVE_INFINITY : meanDiameterMm / coreMm;
    }

    /** Largest stretch by group. */
    public static double largestStretch(MaterialGroup group) {
        return switch (group) {
            case STAINLESS_STEEL, HIGH_STRENGTH_STEEL, ALUMINIUM -> 1.5;
            default -> 1.7;
        };
    }

    /** {@code 3 P} in mm. */
    public static double leastHeightMm(double pitchMm) {
        return 3 * pitchMm;
    }

    /** {@code 2.5 t} in mm, with the sheet. */
    public static double highestMm(double thicknessMm) {
        return 2.5 * thicknessMm;
    }

    /** Warnings on stretch and height of a collar with its hole; a height of 0 is not looked at. */
    public static List<Finding> check(String subject, MaterialGroup group, double meanMm, double coreMm, double heightMm,
            double thicknessMm) {
        List<Finding> findings = new ArrayList<>();
        double stretch = stretch(meanMm, coreMm);
        if (!(stretch <= largestStretch(group) + 1e-9)) {
            findings.add(Finding.of(PressReason.STRETCH, subject, coreMm, meanMm, stretch, largestStretch(group)));
        }
        findings.addAll(FormingRules.checkHeight(subject, heightMm, highestMm(thicknessMm)));
        return findings;
    }
}
