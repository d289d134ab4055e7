// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;

import org.junit.jupiter.api.Test;

/** Validation against worked examples from textbooks and teaching pages, and sweeps. */
class PunchingForceTest {

    static final Material STEEL = new Material("M", "DC01", MaterialGroup.MILD_STEEL, 7.85, 270, 410, 320,
            ClearanceRule.OEHLER_KAISER, 20, 1, 1.0);

    @Test
    @Validates(of = PunchingForce.class, formulas = { "flatN", "shearMPa" },
            source = "Mechanics Reference, University of Illinois, sheet metal: squares 8 x 8 of 2 mm, Rm 500, factor 0.7")
    void squareOfTheIllinoisReference() {
        double f = PunchingForce.flatN(CutLength.rectangleMm(8, 8, 0), 2, PunchingForce.shearMPa(500, 0.7));
        assertEquals(22_400, f, 1e-9);
    }

    /** Brass, L 126, t 2, tau 400: notes of a course on press-tool calculation. */
    @Test
    void brassOfThePressToolCourse() {
        assertEquals(100_800, PunchingForce.flatN(126, 2, 400), 1e-9);
    }

    /**
     * Round 10, t 3, tau 350: a calculator page on punching force prints 32 986; d 20, t 1.5, tau 300: an exam prints 28.3 kN.
     */
    @Test
    void roundsOfPublicPages() {
        assertEquals(32_986.7, PunchingForce.flatN(CutLength.roundMm(10), 3, 350), 0.1);
        assertEquals(28_300, PunchingForce.flatN(CutLength.roundMm(20), 1.5, 300), 50);
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

    @Test
    @Validates(of = PunchingForce.class, formulas = { "shearFactorByFormula", "shearFactor", "largeShearFactor" },
            source = "P. C. Sharma, Production Engineering, from memory: K 0.38, t 2, h 2 gives 0.2754; textbook rule K t / "
                    + "h: 0.38")
    @Validates(of = PunchingForce.class, formulas = "penetration",
            source = "course notes on press tools: soft aluminium 60 %, 0.15 C steel 38 %, 0.5 C steel 24 %")
    void shearOfThePunch() {
        assertEquals(0.2754, PunchingForce.shearFactorByFormula(0.38, 2, 2), 1e-4);
        assertEquals(0.38, PunchingForce.largeShearFactor(0.38, 2, 2), 1e-12);
        assertEquals(0.5, PunchingForce.shearFactor(MaterialGroup.MILD_STEEL, 2, 2));
        assertEquals(0.60, PunchingForce.penetration(MaterialGroup.ALUMINIUM));
        assertEquals(0.38, PunchingForce.penetration(MaterialGroup.MILD_STEEL));
        assertEquals(0.24, PunchingForce.penetration(MaterialGroup.HIGH_STRENGTH_STEEL));
    }

    /** A public calculator page on shear solves L t (t p) / F: L 615.66, t 0.009, p 0.000499985, F 0.015571 give 0.0016013. */
    @Test
    void largeShearOfACalculatorPage() {
        double cut = 615.66;
        double t = 0.009;
        double p = 0.000499985;
        double shear = 0.00160127685910346;
        double full = cut * t;
        assertEquals(0.015571, full * PunchingForce.largeShearFactor(p, t, shear), 1e-6);
    }

    @Test
    @Validates(of = PunchingForce.class, formulas = "inclinedN",
            source = "plane geometry of the inclined cut by hand: t 2, tau 300, 3 degrees: 11 449 N, least edge 38.16 mm")
    void inclinedCut() {
        assertEquals(11_449, PunchingForce.inclinedN(100, 2, 300, 3), 1);
        assertEquals(11_449, PunchingForce.inclinedN(38.17, 2, 300, 3), 1);
        assertEquals(PunchingForce.flatN(5, 2, 300), PunchingForce.inclinedN(5, 2, 300, 3), 1e-9);
    }

    @Test
    @Sweeps(of = PunchingForce.class, formulas = { "shearFactor", "shearFactorByFormula", "largeShearFactor", "penetration" })
    void shearNeverAddsForceAndFallsWithHeight() {
        for (MaterialGroup group : MaterialGroup.values()) {
            double k = PunchingForce.penetration(group);
            assertTrue(k > 0.2 && k <= 0.6, group.toString());
            double last = 1;
            double lastFormula = 1;
            double lastLarge = 1;
            for (double h = 0; h <= 6; h += 0.1) {
                double factor = PunchingForce.shearFactor(group, 3, h);
                double formula = PunchingForce.shearFactorByFormula(k, 3, h);
                double large = PunchingForce.largeShearFactor(k, 3, h);
                assertTrue(factor <= last + 1e-12 && factor >= 0.5, group + " " + h);
                assertTrue(formula <= lastFormula + 1e-12 && formula > 0 && formula <= large + 1e-12, group + " " + h);
                assertTrue(large <= lastLarge + 1e-12, group + " " + h);
                last = factor;
                lastFormula = formula;
                lastLarge = large;
            }
        }
    }

    /** The work of a hit is the force times its way, so the force in tonnes times mm must be the same in any units. */
    @Test
    @Sweeps(of = PunchingForce.class, formulas = { "flatN", "shearMPa", "inclinedN" })
    void forceIsLinearInEachAndTheInclinedCutIsItsTriangle() {
        Draw.many(4711, 500, d -> {
            double cut = d.between(5, 600);
            double t = d.between(0.4, 8);
            double rm = d.between(100, 800);
            double tau = PunchingForce.shearMPa(rm, 0.8);
            assertEquals(0.8 * rm, tau, 1e-9);
            double f = PunchingForce.flatN(cut, t, tau);
            assertEquals(2 * f, PunchingForce.flatN(2 * cut, t, tau), 1e-6 * f);
            assertEquals(3 * f, PunchingForce.flatN(cut, 3 * t, tau), 1e-6 * f);
            double angle = d.between(1, 12);
            double reach = t / Math.tan(Math.toRadians(angle));
            double inclined = PunchingForce.inclinedN(10 * reach, t, tau, angle);
            assertEquals(triangle(reach, t, tau), inclined, 2e-3 * inclined);
            assertTrue(PunchingForce.inclinedN(cut, t, tau, angle) <= f + 1e-6);
        });
    }

    /** Sum of thin strips under the blade, each with the rest of its thickness. */
    private static double triangle(double reach, double t, double tau) {
        double sum = 0;
        int n = 2000;
        for (int i = 0; i < n; i++) {
            sum += reach / n * (t * (1 - (i + 0.5) / n)) * tau;
        }
        return sum;
    }

    @Test
    void outsideTheThicknessRangeAFindingIsGiven() {
        Map<String, Double> thick = Map.of("length", 100.0, "thickness", 12.0);
        assertEquals(PressReason.RANGE, Calculation.FORCE.answer(thick, STEEL).findings().getFirst().reason());
        assertTrue(Calculation.FORCE.answer(Map.of("length", 100.0, "thickness", 2.0), STEEL).findings().isEmpty());
        assertEquals(PressReason.RANGE, PunchingForce.check("x", 12).getFirst().reason());
        assertTrue(PunchingForce.check("x", 8).isEmpty());
    }
}
