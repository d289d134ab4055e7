// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import java.util.ArrayList;
import java.util.List;

import punchwright.engine.finding.Finding;

/**
 * Danger that a slug comes up again with the punch.
 *
 * <p>Symbols: A punch area [mm2], t [mm], d smallest side [mm], c total clearance and n the rule's [mm]. The pull of a sealed
 * oil film is at most the air's pressure, {@code F = 0.101325 A} [N] (standard atmosphere, ISO 2533), the slug's weight
 * {@code 9.80665 A t rho} is far less. What raises the danger, one point each: clearance more than 20 % over the rule, oil
 * without suction, sheet below 1 mm, soft sheet (aluminium, copper), a punch smaller than 3 t (the first two: stamping-journal
 * article on slug pulling; the rest and the threshold of two points: common practice). Range: t 0.4 to 8 mm; a direction, not a
 * chance in per cent. Worked example: round 10: 78.54 mm2, 7.96 N.
 */
public final class SlugPulling {

    /** Points from which a warning is given. */
    public static final int DANGER = 2;

    private SlugPulling() {
    }

    /** What raises the danger. */
    public enum Cause {
        WIDE_CLEARANCE, OIL_WITHOUT_SUCTION, THIN_SHEET, SOFT_SHEET, SMALL_PUNCH
    }

    /** Pull of a sealed film at most, {@code 0.101325 A} in N. */
    public static double vacuumN(double areaMm2) {
        return 0.101325 * areaMm2;
    }

    /** Weight of the slug, {@code 9.80665 A t rho 1e-6} in N, rho in kg/dm3. */
    public static double weightN(double areaMm2, double thicknessMm, double densityKgPerDm3) {
        return 9.80665e-6 * areaMm2 * thicknessMm * densityKgPerDm3;
    }

    /** The causes at hand, in fixed order. */
    public static List<Cause> causes(MaterialGroup group, double thicknessMm, double smallestSideMm, double clearanceMm,
            double needMm, boolean oilWithoutSuction) {
        List<Cause> causes = new ArrayList<>();
        add(causes, Cause.WIDE_CLEARANCE, clearanceMm > 1.2 * needMm + 1e-9);
        add(causes, Cause.OIL_WITHOUT_SUCTION, oilWithoutSuction);
        add(causes, Cause.THIN_SHEET, thicknessMm < 1 - 1e-9);
        add(causes, Cause.SOFT_SHEET, group == MaterialGroup.ALUMINIUM || group == MaterialGroup.COPPER);
        add(causes, Cause.SMALL_PUNCH, smallestSideMm < 3 * thicknessMm - 1e-9);
        return causes;
    }

    /** A warning from two causes on. */
    public static List<Finding> check(String subject, List<Cause> causes) {
        return causes.size() < DANGER ? List.of()
                : List.of(Finding.of(PressReason.SLUG_PULLING, subject, causes.size(), Cause.values().length,
                        flag(causes, Cause.WIDE_CLEARANCE), flag(causes, Cause.OIL_WITHOUT_SUCTION), flag(causes,
                                Cause.THIN_SHEET),
                        flag(causes, Cause.SOFT_SHEET), flag(causes, Cause.SMALL_PUNCH)));
    }

    private static void add(List<Cause> causes, Cause cause, boolean holds) {
        if (holds) {
            causes.add(cause);
        }
    }

    /** 1 or 0 for a choice in the text. */
    private static int flag(List<Cause> causes, Cause cause) {
        return causes.contains(cause) ? 1 : 0;
    }
}
