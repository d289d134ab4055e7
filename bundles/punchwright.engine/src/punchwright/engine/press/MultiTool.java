// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

/**
 * Inserts in a multi-tool.
 *
 * <p>Symbols: D outer diameter of the holder's bore circle [mm], n inserts on a ring, w wall between neighbours and to the rim
 * [mm], d largest insert [mm], F force [N], e distance of an insert from the ram axis [mm]. Equal circles on a ring in a
 * circle: {@code d = (D s - w (2 s + 1)) / (1 + s)}, {@code s = sin(pi / n)}. One insert hits at a time, off the ram axis, so
 * the holder tilts with {@code M = F e / 1000} [Nm], and its limit is on force, not on the insert. Range: n 2 to 12, w from 0.
 * Source: plane geometry; mechanics. Worked example: four and six inserts without walls take circles in the ratio 0.4142 to
 * 0.3333, which is the trade's 25 to 20 mm within 1 %.
 */
public final class MultiTool {

    private MultiTool() {
    }

    /** Largest of n equal inserts on one ring in a holder of outer diameter D with walls w, mm. */
    public static double largestInsertMm(double outerMm, int inserts, double wallMm) {
        double s = Math.sin(Math.PI / inserts);
        return (outerMm * s - wallMm * (2 * s + 1)) / (1 + s);
    }

    /** Distance of the ring of inserts from the ram axis, {@code (D - d) / 2 - w} in mm. */
    public static double ringRadiusMm(double outerMm, double insertMm, double wallMm) {
        return (outerMm - insertMm) / 2 - wallMm;
    }

    /** Tilting moment {@code F e / 1000} in Nm. */
    public static double tiltingMomentNm(double forceN, double offAxisMm) {
        return forceN * offAxisMm / 1000;
    }
}
