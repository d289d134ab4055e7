// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import java.util.List;

import punchwright.engine.finding.Finding;

/**
 * Least webs and distances.
 *
 * <p>Symbols: t thickness [mm], r bend radius [mm]; results in mm. Least web between openings {@code max(1, t)}, better
 * {@code max(2, 2 t)}; to the part's edge {@code t} (stamping-design articles: below it the edge bulges), better
 * {@code 1.5 t}; to a bend line {@code 2 t + r}; to a form {@code 3 t}. Range: t 0.4 to 8 mm. Common practice where no article is
 * named. Worked example: t 1.5: better web 3.0; bend with r 2: 5.0.
 */
public final class WebRules {

    private WebRules() {
    }

    public static double leastWebMm(double thicknessMm) {
        return Math.max(1, thicknessMm);
    }

    public static double betterWebMm(double thicknessMm) {
        return Math.max(2, 2 * thicknessMm);
    }

    public static double leastEdgeMm(double thicknessMm) {
        return thicknessMm;
    }

    public static double betterEdgeMm(double thicknessMm) {
        return 1.5 * thicknessMm;
    }

    public static double toBendMm(double thicknessMm, double bendRadiusMm) {
        return 2 * thicknessMm + bendRadiusMm;
    }

    public static double toFormMm(double thicknessMm) {
        return 3 * thicknessMm;
    }

    /** A warning when a web is thinner than the least. */
    public static List<Finding> check(String subject, double webMm, double thicknessMm) {
        return webMm >= leastWebMm(thicknessMm) - 1e-6 ? List.of()
                : List.of(Finding.of(PressReason.WEB, subject, webMm, leastWebMm(thicknessMm), thicknessMm));
    }
}
