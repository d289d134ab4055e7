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
 * at most {@code K t} deep ({@link PunchingForce#penetration}), usually 0.3 to 0.35 t. Order: after all punching near them,
 * forms upward before forms downward, low before high; a form upward must pass under stripper and head ({@code H <= c}), a form
 * downward over the table's brushes and the die holders. Where the record names no clearance: over the sheet what the thickest
 * sheet of the machine leaves ({@code T - t}, geometry), under it none. Hits that a form takes: its height over the highest
 * that one hit makes; along a bead steps of a quarter of the
 * roller. Range: t 0.4 to 4 mm. Source: common practice of the trade, no source; the half-shear follows from course
 * notes on press tools. Worked examples: t 3 mild steel: half-shear below 1.14 mm; louvre 6 high in t 1.5: two hits.
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

    /**
     * Edge of a form to the edge of a later hit, mm: what the tool's record says; else {@code 3 t}, or what half the die
     * ({@link #toNextHitMm}) reaches beyond the form where that is more.
     *
     * @param recordMm    the record's figure, 0 where it has none
     * @param dieMm       size of the die, 0 where not known
     * @param halfFormMm  half the form's longer side or diameter
     */
    public static double keepClearMm(double recordMm, double dieMm, double halfFormMm, double thicknessMm) {
        return recordMm > 0 ? recordMm : Math.max(WebRules.toFormMm(thicknessMm), toNextHitMm(dieMm) - halfFormMm);
    }

    /** Edge to edge of two forms of one tool: its die is relieved for its neighbour at the pitch of louvres, so {@code 4 t}. */
    public static double toOwnNeighbourMm(double thicknessMm) {
        return louvrePitchMm(0, thicknessMm);
    }

    /** Hits that a form takes, at least 1: its height over the highest that one hit makes. */
    public static int hits(double heightMm, double highestMm) {
        return highestMm <= 0 ? 1 : Math.max(1, (int) Math.ceil(Math.abs(heightMm) / highestMm - 1e-9));
    }

    /** How far the hits of a roller overlap along a bead longer than it, three quarters of its length, mm. */
    public static double beadOverlapMm(double rollerMm) {
        return 0.75 * rollerMm;
    }

    /** Clear height over the sheet, mm: what the record says, else what the thickest sheet leaves, {@code T - t}. */
    public static double clearAboveMm(double recordMm, double thickestMm, double thicknessMm) {
        return recordMm > 0 ? recordMm : Math.max(0, thickestMm - thicknessMm);
    }

    /** Whether a form may be made before hits that pass over it: height over the sheet against the clearance. */
    public static boolean passes(double heightMm, double underStripperMm) {
        return Math.abs(heightMm) <= underStripperMm + 1e-9;
    }

    /** Forms in the order of making: up before down, low before high, as given among equals; heights in mm, up positive. */
    public static List<Integer> order(List<Double> heightsMm) {
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < heightsMm.size(); i++) {
            order.add(i);
        }
        order.sort((a, b) -> compare(heightsMm.get(a), heightsMm.get(b)));
        return order;
    }

    /** Below 0 where a form of the first height comes before one of the second; heights in mm, up positive. */
    public static int compare(double firstMm, double secondMm) {
        int way = Boolean.compare(firstMm < 0, secondMm < 0);
        return way != 0 ? way : Double.compare(Math.abs(firstMm), Math.abs(secondMm));
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
