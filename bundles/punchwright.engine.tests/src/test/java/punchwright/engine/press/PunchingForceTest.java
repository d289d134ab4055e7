// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Validation against worked examples from textbooks and teaching pages, and sweeps. */
class PunchingForceTest {

    static final Material STEEL = new Material("M", "DC01", MaterialGroup.MILD_STEEL, 7.85, 270, 410, 320,
            ClearanceRule.OEHLER_KAISER, 20, 1, 1.0);

    /** Squares 8 x 8 of 2 mm, Rm 500, factor 0.7: Mechanics Reference, University of Illinois, sheet metal. */
    @Test
    void squareOfTheIllinoisReference() {
        double f = PunchingForce.flatN(CutLength.rectangleMm(8, 8, 0), 2, PunchingForce.shearMPa(500, 0.7));
        assertEquals(22_400, f, 1e-9);
    }

    /** Brass, L 126, t 2, tau 400: notes of a course on press-tool calculation. */
    @Test
    void brassOfThePressToolCourse() {
        assertEquals(100_800, PunchingForce.flatN(126, 2, 400), 1e-9);
    }

    /** Round 10, t 3, tau 350: a calculator page on punching force prints 32 986. */
    @Test
    void roundOfACalculatorPage() {
        assertEquals(32_986.7, PunchingForce.flatN(CutLength.roundMm(10), 3, 350), 0.1);
        assertEquals(109_956, PunchingForce.flatN(CutLength.roundMm(50), 2, 350), 1);
    }

    /** Disc 150, t 3.2, tau 310: Groover, Fundamentals of Modern Manufacturing, blanking example, from memory. */
    @Test
    void discOfGroover() {
        assertEquals(467_469, PunchingForce.flatN(CutLength.roundMm(150), 3.2, 310), 1);
    }

    /** d 25, t 3.2, Rm 1000, 0.7: Kalpakjian and Schmid, Manufacturing Engineering and Technology, from memory (0.18 MN). */
    @Test
    void holeOfKalpakjian() {
        assertEquals(175_900, PunchingForce.flatN(CutLength.roundMm(25), 3.2, PunchingForce.shearMPa(1000, 0.7)), 50);
    }

    /** K 0.38, t 2, h 2: P. C. Sharma, Production Engineering, from memory; the saving is capped. */
    @Test
    void shearOfThePunch() {
        assertEquals(0.2754, PunchingForce.shearFactorByFormula(0.38, 2, 2), 1e-4);
        assertEquals(0.5, PunchingForce.shearFactor(MaterialGroup.MILD_STEEL, 2, 2));
        Figure f = PunchingForce.figure(100, 2, STEEL, 2, 1.2);
        assertEquals(100 * 2 * 320 * 0.5 * 1.2, f.value(), 1e-6);
        assertEquals(PressReason.SHEAR_CAPPED, f.findings().getFirst().reason());
    }

    /** t 2, tau 300, 3 degrees: plane geometry of the inclined cut; least edge t / tan(phi) = 38.16 mm. */
    @Test
    void inclinedCut() {
        assertEquals(11_449, PunchingForce.inclinedN(100, 2, 300, 3), 1);
        assertEquals(PunchingForce.flatN(5, 2, 300), PunchingForce.inclinedN(5, 2, 300, 3), 1e-9);
    }

    @Test
    void shearNeverAddsForceAndFallsWithHeight() {
        for (MaterialGroup group : MaterialGroup.values()) {
            double last = 1;
            for (double h = 0; h <= 6; h += 0.1) {
                double factor = PunchingForce.shearFactor(group, 3, h);
                assertTrue(factor <= last + 1e-12 && factor >= 0.5, group + " " + h);
                last = factor;
            }
        }
    }

    @Test
    void outsideTheThicknessRangeAFindingIsGiven() {
        assertEquals(PressReason.RANGE, PunchingForce.figure(100, 12, STEEL, 0, 1).findings().getFirst().reason());
        assertTrue(PunchingForce.figure(100, 2, STEEL, 0, 1).findings().isEmpty());
    }
}
