// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

/**
 * A punch face ground with shear: its height, and the share of the contour that cuts at once.
 *
 * <p>Symbols: l length of the face along the slope [mm], w width across it [mm], phi shear angle [degrees], h height of the slope
 * [mm], b penetration band K t [mm]. Height: one-sided {@code h = l tan(phi)}, roof {@code h = (l / 2) tan(phi)}. An edge cuts
 * while its penetration lies in the band, so with {@code s = min(1, b / h)} the share of the flat force is, rectangle,
 * {@code (w + 2 l s) / (2 l + 2 w)} one-sided and {@code (2 w + 2 l s) / (2 l + 2 w)} roof; round,
 * {@code 2 acos(1 - 2 s) / (2 pi)} one-sided and {@code 2 acos(1 - s) / pi} roof, the most that lies in the band at once; 1 where
 * the band is higher than the slope. Range: h from 0 to 4 t, 0 to 15 degrees. Source: plane geometry with the penetrations of
 * {@link PunchingForce#penetration}. Warning: the edge left out keeps pushing a little; shops trust no saving above one half. It
 * also shows what the roof costs: a roof on a short wide punch saves nearly nothing, one along a slitting tool nearly all.
 * Worked example: 50 x 5, b 0.76, h 2.0: s 0.38, one-sided 0.3909, roof 0.4364.
 */
public final class SlopedFace {

    private SlopedFace() {
    }

    /** One-sided: {@code l tan(phi)} in mm. */
    public static double oneSidedHeightMm(double lengthMm, double angleDeg) {
        return lengthMm * Math.tan(Math.toRadians(angleDeg));
    }

    /** Roof: {@code (l / 2) tan(phi)} in mm. */
    public static double roofHeightMm(double lengthMm, double angleDeg) {
        return oneSidedHeightMm(lengthMm / 2, angleDeg);
    }

    /** Share of the flat force of a rectangle l x w, sloped along l. */
    public static double rectangleOneSided(double lengthMm, double widthMm, double bandMm, double heightMm) {
        double s = inBand(bandMm, heightMm);
        return s >= 1 ? 1 : (widthMm + 2 * lengthMm * s) / (2 * (lengthMm + widthMm));
    }

    /** Share of the flat force of a rectangle l x w with a roof along l. */
    public static double rectangleRoof(double lengthMm, double widthMm, double bandMm, double heightMm) {
        double s = inBand(bandMm, heightMm);
        return s >= 1 ? 1 : (2 * widthMm + 2 * lengthMm * s) / (2 * (lengthMm + widthMm));
    }

    /** Share of the flat force of a round punch with a one-sided slope. */
    public static double roundOneSided(double bandMm, double heightMm) {
        return Math.acos(1 - 2 * inBand(bandMm, heightMm)) / Math.PI;
    }

    /** Share of the flat force of a round punch with a roof. */
    public static double roundRoof(double bandMm, double heightMm) {
        return 2 * Math.acos(1 - inBand(bandMm, heightMm)) / Math.PI;
    }

    private static double inBand(double bandMm, double heightMm) {
        return heightMm <= bandMm ? 1 : bandMm / heightMm;
    }
}
