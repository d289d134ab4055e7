// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Validation: plane geometry, values worked by hand. */
class CutLengthTest {

    @Test
    void commonShapes() {
        assertEquals(151.416, CutLength.rectangleMm(50, 30, 5), 0.001);
        assertEquals(91.416, CutLength.obroundMm(40, 10), 0.001);
        assertEquals(58.890, CutLength.hexagonMm(17), 0.001);
        assertEquals(30, CutLength.triangleMm(10));
    }

    /** A flat at the middle leaves half the circle and the diameter; two flats far apart leave the circle. */
    @Test
    void flatsInTheirLimits() {
        assertEquals(Math.PI * 10 + 20, CutLength.singleFlatMm(20, 10), 1e-9);
        assertEquals(Math.PI * 20, CutLength.singleFlatMm(20, 20), 1e-9);
        assertEquals(Math.PI * 20, CutLength.doubleFlatMm(20, 20), 1e-9);
    }

    /** Round 10 stepped 2: 17.7215 mm, 10 633 N at t 2, tau 300; limits half and full circle. */
    @Test
    void steppedPunchesCutLess() {
        assertEquals(17.7215, CutLength.steppedRoundMm(10, 2), 1e-4);
        assertEquals(10_633, PunchingForce.flatN(CutLength.steppedRoundMm(10, 2), 2, 300), 1);
        assertEquals(Math.PI * 5, CutLength.steppedRoundMm(10, 1e-12), 1e-6);
        assertEquals(Math.PI * 10, CutLength.steppedRoundMm(10, 10), 1e-9);
        assertEquals(101, CutLength.steppedRectangleMm(50, 5, 48));
        assertEquals(110, CutLength.rectangleMm(50, 5, 0));
    }
}
