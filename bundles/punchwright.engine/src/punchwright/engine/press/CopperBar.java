// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import java.util.ArrayList;
import java.util.List;

import punchwright.engine.finding.Finding;

/**
 * Rules for copper bar (EN 13601 names the bars): thicker than sheet, soft, punched with slender punches.
 *
 * <p>Symbols: t thickness, d hole, e edge distance, b web [mm]. {@code d >= t}, {@code e >= t}, {@code b >= t}; t up to 10 mm.
 * From 3 mm on copper counts as bar. Range: t 3 to 10 mm. Source: common practice of the trade, no source. Worked example: d
 * 11, t 10, tau 240: F 82 938 N, 873 MPa on the punch, allowed.
 */
public final class CopperBar {

    /** Thickness from which copper counts as bar, and up to which it is punched, mm. */
    public static final double LEAST_MM = 3;
    public static final double LARGEST_MM = 10;

    private CopperBar() {
    }

    /** Whether the rules apply. */
    public static boolean applies(MaterialGroup group, double thicknessMm) {
        return group == MaterialGroup.COPPER && thicknessMm >= LEAST_MM - 1e-9;
    }

    public static double leastHoleMm(double thicknessMm) {
        return thicknessMm;
    }

    public static double leastEdgeMm(double thicknessMm) {
        return thicknessMm;
    }

    public static double leastWebMm(double thicknessMm) {
        return thicknessMm;
    }

    /** Warnings on hole, edge and web; a size of 0 or less is not looked at. */
    public static List<Finding> check(String subject, double thicknessMm, double holeMm, double edgeMm, double webMm) {
        List<Finding> findings = new ArrayList<>();
        add(findings, subject, thicknessMm, holeMm, leastHoleMm(thicknessMm), 0);
        add(findings, subject, thicknessMm, edgeMm, leastEdgeMm(thicknessMm), 1);
        add(findings, subject, thicknessMm, webMm, leastWebMm(thicknessMm), 2);
        if (thicknessMm > LARGEST_MM + 1e-9) {
            findings.add(Finding.of(PressReason.RANGE, subject, "t", thicknessMm, "mm", LEAST_MM, LARGEST_MM, "d, e, b >= t"));
        }
        return findings;
    }

    private static void add(List<Finding> findings, String subject, double thicknessMm, double valueMm, double leastMm,
            int what) {
        if (valueMm > 0 && valueMm < leastMm - 1e-6) {
            findings.add(Finding.of(PressReason.COPPER_BAR, subject, what, valueMm, leastMm, thicknessMm));
        }
    }
}
