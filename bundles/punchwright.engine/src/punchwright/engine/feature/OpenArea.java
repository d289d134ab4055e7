// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.feature;

/**
 * Share of the open area of a perforated field and holes for each square metre, by the terms of ISO 7805 and DIN 24041:
 * w is the size of a hole, p the pitch within a row, both in mm. Open area = area of a hole / area of the field for each
 * hole; the latter is p^2 in square pitch and p^2 sin 60 in rows staggered by 60 degrees.
 */
public final class OpenArea {

    private static final double SIN_60 = Math.sqrt(3) / 2;
    private static final double MM2_PER_M2 = 1e6;

    private OpenArea() {
    }

    /** Round holes, rows staggered by 60 degrees: 50 pi / sqrt(3) w^2 / p^2 = 90.69 w^2 / p^2, in per cent. */
    public static double roundStaggered60Percent(double w, double p) {
        check(w, p);
        return 100 * Math.PI / 4 * w * w / (p * p * SIN_60);
    }

    /** Round holes in square pitch: 25 pi w^2 / p^2 = 78.54 w^2 / p^2, in per cent. */
    public static double roundSquarePercent(double w, double p) {
        check(w, p);
        return 100 * Math.PI / 4 * w * w / (p * p);
    }

    /**
     * Round holes in diagonal pitch, p measured along the diagonal between next holes: the square field turned by 45 degrees, so
     * 25 pi w^2 / p^2 as well, in per cent.
     */
    public static double roundDiagonalPercent(double w, double p) {
        return roundSquarePercent(w, p);
    }

    /** Square holes in line, square pitch: 100 w^2 / p^2, in per cent. */
    public static double squareSquarePercent(double w, double p) {
        check(w, p);
        return 100 * w * w / (p * p);
    }

    /** Square holes, rows as far apart as holes in a row and shifted by half a pitch: the same share, in per cent. */
    public static double squareStaggeredPercent(double w, double p) {
        return squareSquarePercent(w, p);
    }

    /**
     * Slots with round ends, w wide and l long over all, one for each field of p1 x p2: 100 (w l - (1 - pi / 4) w^2) / (p1 p2),
     * in per cent. Rows shifted by half have the same share; where the field p1 x p2 holds a second slot in its middle, it is
     * twice that.
     *
     * @param p1 across the slots, above w
     * @param p2 along them, above l
     */
    public static double obroundPercent(double w, double l, double p1, double p2) {
        check(w, p1);
        check(l, p2);
        if (l < w) {
            throw new IllegalArgumentException("slot " + l + " mm long and " + w
                    + " mm wide: the length must not be below the width");
        }
        return 100 * (w * l - (1 - Math.PI / 4) * w * w) / (p1 * p2);
    }

    /**
     * Hexagons, w across flats, rows staggered by 60 degrees: 100 w^2 / p^2, since hole and field are like hexagons, in per cent.
     */
    public static double hexagonStaggered60Percent(double w, double p) {
        check(w, p);
        return 100 * w * w / (p * p);
    }

    /** Holes for each square metre, rows staggered by 60 degrees: 1 154 700 / p^2. */
    public static double holesPerM2Staggered60(double p) {
        check(0, p);
        return MM2_PER_M2 / (p * p * SIN_60);
    }

    /** Holes for each square metre in square pitch: 1 000 000 / p^2. */
    public static double holesPerM2Square(double p) {
        check(0, p);
        return MM2_PER_M2 / (p * p);
    }

    private static void check(double w, double p) {
        if (!(p > 0) || !(w >= 0) || w >= p) {
            throw new IllegalArgumentException("hole " + w + " mm, pitch " + p
                    + " mm: the pitch must be above 0 and above the hole");
        }
    }
}
