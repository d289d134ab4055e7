// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

/**
 * What the cut edge looks like at a clearance: rollover, burnished band, burr.
 *
 * <p>Symbols: q clearance per side in per cent of t, t [mm]; bands in mm. Measured on cold-rolled steel (HRB 59, t 0.70, hole
 * 4.70; stamping-design article): at q 5 and 9 the burnish is 0.53 and 0.38, the rollover's depth 0.07 and 0.09, its length
 * 0.34 and 0.25. Between them straight lines in shares of t: burnish {@code t (0.7571 - 0.0536 (q - 5))}, rollover
 * {@code t (0.1 + 0.0071 (q - 5))}. Burr, of sharp tools, about 10 per cent of t (same article). Range: q 5 to 9, t 0.25 to 3
 * mm, mild steel; elsewhere a direction and no more. Worked example: t 2, q 5: burnish 1.514, rollover 0.2, burr 0.2.
 */
public final class EdgeQuality {

    /** Clearances per side measured, per cent of t. */
    public static final double LEAST_PERCENT = 5;
    public static final double LARGEST_PERCENT = 9;
    private static final double MEASURED_THICKNESS_MM = 0.70;
    private static final double[] BURNISH_MM = { 0.53, 0.38 };
    private static final double[] ROLLOVER_MM = { 0.07, 0.09 };

    private EdgeQuality() {
    }

    /** Height of the burnished band, mm; not below 0. */
    public static double burnishMm(double perSidePercent, double thicknessMm) {
        return Math.max(0, between(BURNISH_MM, perSidePercent) * thicknessMm);
    }

    /** Depth of the rollover, mm; not below 0. */
    public static double rolloverMm(double perSidePercent, double thicknessMm) {
        return Math.max(0, between(ROLLOVER_MM, perSidePercent) * thicknessMm);
    }

    /** Burr of sharp tools, {@code 0.1 t} in mm. */
    public static double burrMm(double thicknessMm) {
        return 0.1 * thicknessMm;
    }

    private static double between(double[] measuredMm, double percent) {
        double slope = (measuredMm[1] - measuredMm[0]) / (LARGEST_PERCENT - LEAST_PERCENT);
        return (measuredMm[0] + slope * (percent - LEAST_PERCENT)) / MEASURED_THICKNESS_MM;
    }
}
