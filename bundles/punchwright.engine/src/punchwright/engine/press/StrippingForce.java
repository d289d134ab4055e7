// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

/**
 * Force to strip the sheet from the punch.
 *
 * <p>Symbols: F punching force [N], share 0.03 to 0.20 (handbook range, mostly 0.10; common practice up to 0.40 for thick,
 * sticky or tightly cut sheet), L cut length [mm], t [mm]. Two rules side by side: {@code Fs = share F} (press-tool course
 * notes) and {@code Fs = 24.13 L t} (3500 lb/in2 times edge times thickness, Machinery's Handbook, from memory). The first
 * is used. Range: share 0.03 to 0.40. Worked example: F 100 800 N, 20 % gives 20 160 N; L 100, t 2 gives 4 826 N by the second.
 */
public final class StrippingForce {

    /** Usual share of the punching force. */
    public static final double USUAL_SHARE = 0.10;

    private StrippingForce() {
    }

    /** {@code share F} in N. */
    public static double byShareN(double punchingN, double share) {
        return share * punchingN;
    }

    /** {@code 24.13 L t} in N. */
    public static double byEdgeAreaN(double cutLengthMm, double thicknessMm) {
        return 24.13 * cutLengthMm * thicknessMm;
    }

    /**
     * Share for a clearance: 0.10 at or above the rule's clearance, rising to 0.20 at half of it and below. Soft ductile
     * groups (aluminium, copper) take half as much again. Common practice, no source.
     */
    public static double share(MaterialGroup group, double clearanceMm, double clearanceNeedMm) {
        double ratio = clearanceNeedMm <= 0 ? 1 : Math.clamp(clearanceMm / clearanceNeedMm, 0.5, 1);
        double share = USUAL_SHARE * (3 - 2 * ratio);
        return group == MaterialGroup.ALUMINIUM || group == MaterialGroup.COPPER ? 1.5 * share : share;
    }
}
