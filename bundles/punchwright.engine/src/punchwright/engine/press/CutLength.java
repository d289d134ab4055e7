// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import java.util.Collection;

import punchwright.engine.geometry.Contour;

/**
 * Length of the edge that a punch cuts, per shape.
 *
 * <p>Inputs in mm; result in mm. Range: positive sizes, {@code l >= w}, {@code r <= w/2}. Source: plane geometry. Worked
 * example: rectangle 50 x 30 with corner radius 5 gives 151.416 mm.
 */
public final class CutLength {

    private CutLength() {
    }

    /** Round of diameter d: {@code pi d}. */
    public static double roundMm(double d) {
        return Math.PI * d;
    }

    /** Rectangle l x w with corner radius r: {@code 2 (l + w) - (8 - 2 pi) r}. */
    public static double rectangleMm(double l, double w, double r) {
        return 2 * (l + w) - (8 - 2 * Math.PI) * r;
    }

    /** Obround of overall length l and width w: {@code 2 (l - w) + pi w}. */
    public static double obroundMm(double l, double w) {
        return 2 * (l - w) + Math.PI * w;
    }

    /** Regular hexagon across flats s: {@code 2 sqrt(3) s}. */
    public static double hexagonMm(double s) {
        return 2 * Math.sqrt(3) * s;
    }

    /** Equilateral triangle of side s: {@code 3 s}. */
    public static double triangleMm(double s) {
        return 3 * s;
    }

    /** Circle of diameter d with one flat, h over the flat: arc {@code d (pi - acos(2h/d - 1))} and chord. */
    public static double singleFlatMm(double d, double h) {
        double half = Math.acos(2 * h / d - 1);
        return d * (Math.PI - half) + d * Math.sin(half);
    }

    /** Circle of diameter d with two flats at the distance h: arcs {@code 2 d asin(h/d)} and two chords. */
    public static double doubleFlatMm(double d, double h) {
        return 2 * d * Math.asin(h / d) + 2 * Math.sqrt(d * d - h * h);
    }

    /** Square of side a with four concave corner arcs of radius r: {@code 4 (a - 2 r) + 2 pi r}. */
    public static double cornerRadiusMm(double a, double r) {
        return 4 * (a - 2 * r) + 2 * Math.PI * r;
    }

    /**
     * Edge in solid metal of a round punch of diameter d, stepped p along a line, second and later hits:
     * {@code d (pi - acos(p/d))}, {@code 0 < p <= d}; a larger pitch cuts the full circle. Example: d 10, p 2 gives 17.7215.
     */
    public static double steppedRoundMm(double d, double p) {
        return p > d ? roundMm(d) : d * (Math.PI - Math.acos(p / d));
    }

    /**
     * Edge in solid metal of a rectangle a x b stepped p along a, second and later hits: {@code 2 p + b},
     * {@code 0 < p <= a}. Example: 50 x 5, p 48 gives 101.
     */
    public static double steppedRectangleMm(double a, double b, double p) {
        return p > a ? rectangleMm(a, b, 0) : 2 * p + b;
    }

    /** All single punches of a cluster that cut at once: {@code n} times one of them, mm. */
    public static double clusterMm(double singleMm, int punches) {
        return punches * singleMm;
    }

    /** Any contour, or several that cut at once: the sum of their lengths, mm. */
    public static double contoursMm(Collection<Contour> contours) {
        return contours.stream().mapToDouble(Contour::lengthMm).sum();
    }
}
