// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.DoubleUnaryOperator;

import org.junit.jupiter.api.Test;

/** Validation by hand, and a contour cut into small pieces whose largest sum in the band is sought. */
class SlopedFaceTest {

    @Test
    @Validates(of = SlopedFace.class, formulas = { "rectangleOneSided", "rectangleRoof", "roundOneSided", "roundRoof" },
            source = "plane geometry by hand: 50 x 5, band 0.76, height 2.0; circle with the band at half the slope: a "
                    + "quarter turn")
    @Validates(of = SlopedFace.class, formulas = { "oneSidedHeightMm", "roofHeightMm" },
            source = "trigonometry: tan 45 degrees is 1")
    void byHand() {
        assertEquals((5 + 2 * 50 * 0.38) / 110, SlopedFace.rectangleOneSided(50, 5, 0.76, 2), 1e-12);
        assertEquals((10 + 2 * 50 * 0.38) / 110, SlopedFace.rectangleRoof(50, 5, 0.76, 2), 1e-12);
        assertEquals(0.5, SlopedFace.roundOneSided(1, 2), 1e-12);
        assertEquals(2.0 / 3, SlopedFace.roundRoof(1, 2), 1e-12);
        assertEquals(20, SlopedFace.oneSidedHeightMm(20, 45), 1e-9);
        assertEquals(10, SlopedFace.roofHeightMm(20, 45), 1e-9);
    }

    @Test
    @Sweeps(of = SlopedFace.class, formulas = { "rectangleOneSided", "rectangleRoof", "roundOneSided", "roundRoof" })
    void sampledContourAgrees() {
        Draw.many(77, 40, d -> {
            double l = d.between(5, 60);
            double w = d.between(2, 40);
            double band = d.between(0.2, 2);
            double h = d.between(0.1, 6);
            DoubleUnaryOperator slope = x -> h * (x / l + 0.5);
            DoubleUnaryOperator roof = x -> h * 2 * Math.abs(x) / l;
            assertEquals(rectangle(l, w, band, slope), SlopedFace.rectangleOneSided(l, w, band, h), 0.01);
            assertEquals(rectangle(l, w, band, roof), SlopedFace.rectangleRoof(l, w, band, h), 0.01);
            assertEquals(round(l, band, slope), SlopedFace.roundOneSided(band, h), 0.02);
            assertEquals(round(l, band, roof), SlopedFace.roundRoof(band, h), 0.02);
        });
    }

    @Test
    @Sweeps(of = SlopedFace.class, formulas = { "oneSidedHeightMm", "roofHeightMm" })
    void heightsGrowWithTheAngleAndARoofHasHalf() {
        Draw.many(78, 200, d -> {
            double l = d.between(2, 80);
            double phi = d.between(0, 14);
            assertEquals(SlopedFace.oneSidedHeightMm(l, phi), 2 * SlopedFace.roofHeightMm(l, phi), 1e-9);
            assertTrue(SlopedFace.oneSidedHeightMm(l, phi + 1) > SlopedFace.oneSidedHeightMm(l, phi));
        });
    }

    @Test
    void aFlatFaceCutsAllAtOnce() {
        assertEquals(1, SlopedFace.rectangleOneSided(50, 5, 1, 0));
        assertEquals(1, SlopedFace.rectangleRoof(50, 5, 1, 1));
        assertEquals(1, SlopedFace.roundOneSided(1, 0.5), 1e-12);
        assertEquals(1, SlopedFace.roundRoof(1, 0.5), 1e-12);
    }

    /** Share of pieces whose height lies in the best band; pieces of the two cross sides lie at the ends. */
    private static double rectangle(double l, double w, double band, DoubleUnaryOperator height) {
        int n = 4000;
        double[] heights = new double[n + 2];
        double[] lengths = new double[n + 2];
        for (int i = 0; i < n; i++) {
            heights[i] = height.applyAsDouble(-l / 2 + l * (i + 0.5) / n);
            lengths[i] = 2 * l / n;
        }
        heights[n] = height.applyAsDouble(-l / 2);
        heights[n + 1] = height.applyAsDouble(l / 2);
        lengths[n] = w;
        lengths[n + 1] = w;
        return best(heights, lengths, band);
    }

    private static double round(double diameter, double band, DoubleUnaryOperator height) {
        int n = 8000;
        double[] heights = new double[n];
        double[] lengths = new double[n];
        for (int i = 0; i < n; i++) {
            heights[i] = height.applyAsDouble(diameter / 2 * Math.cos(2 * Math.PI * (i + 0.5) / n));
            lengths[i] = Math.PI * diameter / n;
        }
        return best(heights, lengths, band);
    }

    private static double best(double[] heights, double[] lengths, double band) {
        double all = 0;
        double largest = 0;
        for (double l : lengths) {
            all += l;
        }
        for (double low = -0.01; low < 6.1; low += 0.02) {
            double sum = 0;
            for (int i = 0; i < heights.length; i++) {
                sum += heights[i] >= low - 0.01 && heights[i] <= low + band + 0.01 ? lengths[i] : 0;
            }
            largest = Math.max(largest, sum);
        }
        return largest / all;
    }
}
