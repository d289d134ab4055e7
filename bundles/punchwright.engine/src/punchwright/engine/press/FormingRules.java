// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import java.util.ArrayList;
import java.util.List;

import punchwright.engine.finding.Finding;

/**
 * Where forms may stand, how high they may be and when they are made.
 *
 * <p>Symbols: t thickness [mm], H height over the sheet [mm], l form length [mm], D size of the die [mm], z dead zone of a
 * clamp [mm], c clearance under the stripper [mm]. Highest louvre {@code 3 t}; pitch of louvres {@code w + 4 t}; edge of a hole
 * to a form {@code 3 t}; next hit to a form at least the die's radius {@code D / 2}; to a clamp {@code D / 2 + z}; half-shear
 * at most {@code K t} deep ({@link PunchingForce#penetration}), usually 0.3 to 0.35 t. Order: after all punching near them, low
 * forms before high ones; a form upward must pass under stripper and turret ({@code H <= c}), a form downward must pass over
 * the table's brushes and die holders. Range: t 0.4 to 4 mm. Source: common practice of the trade, no source; the half-shear
 * follows from course notes on press tools. Worked example: t 3 mild steel: half-shear below 1.14 mm.
 */
public final class FormingRules {

    private FormingRules() {
    }

    /** {@code 3 t} in mm. */
    public static double highestLouvreMm(double thicknessMm) {
        return 3 * thicknessMm;
    }

    /** {@code w + 4 t} in mm. */
    public static double louvrePitchMm(double louvreWidthMm, double thicknessMm) {
        return louvreWidthMm + 4 * thicknessMm;
    }

    /** From a form's middle to the next hit, half the die, mm. */
    public static double toNextHitMm(double dieMm) {
        return dieMm / 2;
    }

    /** From a form's middle to a clamp's edge, {@code D / 2 + z} in mm. */
    public static double toClampMm(double dieMm, double deadZoneMm) {
        return dieMm / 2 + deadZoneMm;
    }

    /** Depth at which a half-shear breaks through, {@code K t} in mm. */
    public static double halfShearLimitMm(MaterialGroup group, double thicknessMm) {
        return PunchingForce.penetration(group) * thicknessMm;
    }

    /** Whether a form may be made before hits that pass over it: height over the sheet against the clearance. */
    public static boolean passes(double heightMm, double underStripperMm) {
        return Math.abs(heightMm) <= underStripperMm + 1e-9;
    }

    /** Forms in the order of making: low before high, as given among equals; heights in mm, up positive. */
    public static List<Integer> order(List<Double> heightsMm) {
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < heightsMm.size(); i++) {
            order.add(i);
        }
        order.sort((a, b) -> Double.compare(Math.abs(heightsMm.get(a)), Math.abs(heightsMm.get(b))));
        return order;
    }

    /** A warning where a hole's edge lies nearer to a form than {@link WebRules#toFormMm}. */
    public static List<Finding> checkNeighbour(String subject, double distanceMm, double thicknessMm) {
        double least = WebRules.toFormMm(thicknessMm);
        return distanceMm >= least - 1e-6 ? List.of()
                : List.of(Finding.of(PressReason.FORM_NEAR, subject, distanceMm, least, thicknessMm));
    }

    /** A warning where a form is higher than the rule's largest height. */
    public static List<Finding> checkHeight(String subject, double heightMm, double highestMm) {
        return Math.abs(heightMm) <= highestMm + 1e-6 ? List.of()
                : List.of(Finding.of(PressReason.FORM_HIGH, subject, Math.abs(heightMm), highestMm));
    }
}
