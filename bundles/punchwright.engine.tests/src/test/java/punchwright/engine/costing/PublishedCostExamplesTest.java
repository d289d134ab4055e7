// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.costing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.Locale;

import org.junit.jupiter.api.Test;

import punchwright.engine.costing.MachineRateInputs.InterestBasis;

/** Validation: published worked examples to the printed digit. The source stands beside each; misprints are named. */
class PublishedCostExamplesTest {

    private static final double CENT = 0.005;

    /**
     * ABWL-Camp, "Maschinenstundensatz", worked solution. The interest rate is implied by its result (15 % on half of 800
     * 000).
     */
    @Test
    void machineHourRateOfAbwlCamp() {
        double replacement = 800_000 * 143.0 / 110;
        CostSheet s = MachineHourRate.calculate(new MachineRateInputs("press", 800_000, replacement, -10_000, 10, 250 * 2 * 8, 90,
                15, InterestBasis.PURCHASE, 20, 8, 14, 100, 0.35, 9_000 / replacement * 100, 17.53, 100), "EUR");
        assertEquals(1_040_000, s.value("H_replacement"), 1e-9);
        assertEquals(3600, s.value("H_running_hours"), 1e-9);
        assertEquals(29.17, s.value("H_depreciation"), CENT);
        assertEquals(16.67, s.value("H_interest"), CENT);
        assertEquals(2.50, s.value("H_maintenance"), CENT);
        assertEquals(4.90, s.value("H_energy"), CENT);
        assertEquals(0.04, s.value("H_space"), CENT);
        assertEquals(70.81, s.value("H_rate"), CENT);
        assertTrue(s.findings().isEmpty());
    }

    /**
     * Worked on paper: 450 000 over 8 years of 3200 h; 17.578 + 4.219 + 1.800 + 2.700 + 7.031 = 33.328. Other basis by
     * arithmetic.
     */
    @Test
    void machineHourRateOnPaperWithBothBases() {
        assertEquals(33.328, rate(450_000, InterestBasis.REPLACEMENT, 8), 0.0006);
        assertEquals(33.328 - 50_000 / 2.0 * 0.06 / 3200, rate(400_000, InterestBasis.PURCHASE, 8), 0.0006);
    }

    @Test
    void aMachineWithoutLifeIsAnErrorNotANumber() {
        CostSheet s = MachineHourRate.calculate(inputs(450_000, InterestBasis.PURCHASE, 0), "EUR");
        assertEquals(List.of("COST-MACHINE-RATE"), s.findings().stream().map(f -> f.code()).toList());
        assertTrue(s.findings().get(0).isError());
        assertTrue(s.findings().get(0).message().contains("life 0 years"), s.findings().get(0).message());
    }

    private static double rate(double purchase, InterestBasis basis, double life) {
        return MachineHourRate.calculate(inputs(purchase, basis, life), "EUR").value("H_rate");
    }

    private static MachineRateInputs inputs(double purchase, InterestBasis basis, double life) {
        return new MachineRateInputs("press", purchase, 450_000, 0, life, 3200, 100, 6, basis, 60, 96, 18, 60, 0.25, 5, 0, 100);
    }

    /** ABWL-Camp, same page: tool of 2000 with 9 regrinds at 25 times 2.8, lasting 10 times 15 h: 17.533 per h. */
    @Test
    void toolCostOfAbwlCampWithHoursForHits() {
        assertEquals(17.533, ToolWear.perHit(new ToolPrice("t", "tool", 2000, 0, 9, 25 * 2.8, 15), 1), 0.0005);
    }

    /**
     * On paper: price 180, 15 grinds at 12, 100 000 hits each time: 360 / 1 600 000 = 0.000225 a hit. Life factor halves the
     * life.
     */
    @Test
    void toolWearOnPaper() {
        ToolPrice tool = new ToolPrice("t", "tool", 180, 0, 15, 12, 100_000);
        assertEquals(0.000225, ToolWear.perHit(tool, 1), 1e-12);
        assertEquals(0.00045, ToolWear.perHit(tool, 0.5), 1e-12);
    }

    /** BWR teaching page, "Zuschlagskalkulation": FM 800, FL 480, special 120. It misprints the production cost as 2371.14. */
    @Test
    void surchargeCalculationOfBwrPage() {
        CostSheetBuilder b = new CostSheetBuilder("t", "EUR");
        CostContext c = new CostContext(b, "", Locale.ENGLISH);
        SurchargeCalculation.addRates(c, 6.13, 192.23, 4.51, 2.91, 0);
        for (var in : List.of(new Object[] {"In_material", 800.0}, new Object[] {"In_labour", 480.0},
                new Object[] {"In_special", 120.0})) {
            b.input((String) in[0], (String) in[0], "EUR", "g", (Double) in[1], "test");
        }
        SurchargeCalculation.addTo(c, "L1", Formulas.ref("In_material"), Formulas.ref("In_labour"),
                List.of("In_material", "In_labour", "In_special"), "M_L1_overheads_lot");
        assertEquals(49.04, b.value("M_L1_material_overhead_lot"), 1e-9);
        assertEquals(922.70, b.value("M_L1_production_overhead_lot"), 1e-9);
        assertEquals(2371.74, b.value("M_L1_production_cost_lot"), 1e-9);
        assertEquals(106.97, b.value("M_L1_admin_overhead_lot"), 1e-9);
        assertEquals(69.02, b.value("M_L1_sales_overhead_lot"), 1e-9);
        assertEquals(2547.73, b.value("M_L1_overheads_lot") + 800 + 480 + 120, 1e-9);
    }

    /** BWL-Lerntipps, "Andlersche Formel": D 400, S 200, price 10, 10 % gives 400. At the optimum both costs are equal. */
    @Test
    void lotSizeOfLerntipps() {
        double q = LotSize.harris(400, 200, 10 * 0.10);
        assertEquals(400, q, 1e-9);
        assertEquals(LotSize.setUpCostPerYear(400, 200, q), LotSize.holdingCostPerYear(q, 1), 1e-9);
    }

    /** Arithmetic: sqrt(200 * 10 000 * 60 / (5 * 20)) = 1095.4. */
    @Test
    void lotSizeInTheGermanSpelling() {
        assertEquals(Math.sqrt(200.0 * 10_000 * 60 / (5 * 20)), LotSize.harris(10_000, 60, 5 * 0.20), 1e-9);
        assertEquals(1095.4, LotSize.harris(10_000, 60, 5 * 0.20), 0.05);
    }

    /**
     * Haufe, "Optimale Losgröße" (Stefanic-Allmayer): D 5000, S 1500, 20 of 500 a day, 1.20 + 200 * 8 %: 953.12; set-up
     * 7868.9.
     */
    @Test
    void lotSizeWithFiniteRateOfHaufe() {
        double q = LotSize.finiteRate(5000, 1500, 1.20 + 200 * 0.08, 20, 500);
        assertEquals(953.12, q, 0.005);
        assertEquals(7868.9, LotSize.setUpCostPerYear(5000, 1500, q), 0.05);
        assertThrows(IllegalArgumentException.class, () -> LotSize.finiteRate(5000, 1500, 1, 500, 500));
        assertThrows(IllegalArgumentException.class, () -> LotSize.harris(5000, 1500, 0));
    }

    /** On paper: (1800 - 60) / (4.20 - 1.30) = 600. */
    @Test
    void breakEvenOnPaper() {
        assertEquals(600, BreakEven.quantity(60, 4.20, 1800, 1.30).orElseThrow(), 1e-9);
        assertTrue(BreakEven.quantity(60, 1.30, 1800, 4.20).isEmpty());
        assertTrue(BreakEven.quantity(60, 1.30, 60, 1.30).isEmpty());
    }

    /**
     * Worked answers on capital budgeting: 400 000, 8 times 100 000 at 14 %: 63 886. One web answer prints 8766 for the
     * second: 8661.21.
     */
    @Test
    void presentValueOfWorkedAnswers() {
        assertEquals(63_886, PresentValue.net(400_000, Collections.nCopies(8, 100_000.0), 0.14), 1);
        assertEquals(8661.21, PresentValue.net(84_700, Collections.nCopies(8, 17_500.0), 0.10), 0.005);
    }

    /**
     * Worked answers: 25 000 at 3000 and 8 %: 14.28 years in the table, 14.27 closed; 20 000 at 5000: 4.0 static, 6.56 at 15
     * %.
     */
    @Test
    void paybackOfWorkedAnswers() {
        List<Double> flows = Collections.nCopies(20, 3000.0);
        assertEquals(14.28, PresentValue.payback(25_000, flows, 0.08).orElseThrow(), 0.005);
        assertEquals(14.27, PresentValue.paybackOfEqualFlows(25_000, 3000, 0.08).orElseThrow(), 0.005);
        assertEquals(4.0, PresentValue.payback(20_000, Collections.nCopies(6, 5000.0), 0).orElseThrow(), 1e-12);
        assertEquals(6.56, PresentValue.paybackOfEqualFlows(20_000, 5000, 0.15).orElseThrow(), 0.005);
        assertTrue(PresentValue.payback(20_000, Collections.nCopies(3, 5000.0), 0).isEmpty());
        assertTrue(PresentValue.paybackOfEqualFlows(100_000, 5000, 0.15).isEmpty());
    }

    /**
     * Textbook table: 100 h and 80 %: 80, 64, 51.2, 40.96; total 655.36 at 16; 9 to 16 is 245.76 (the table misprints
     * 254.76).
     */
    @Test
    void learningCurveOfTextbookTable() {
        LearningCurve curve = new LearningCurve(100, 0.8);
        assertEquals(80, curve.at(2), 1e-9);
        assertEquals(64, curve.at(4), 1e-9);
        assertEquals(51.2, curve.at(8), 1e-9);
        assertEquals(40.96, curve.at(16), 1e-9);
        assertEquals(655.36, curve.total(16), 1e-9);
        assertEquals(245.76, curve.next(8, 8), 1e-9);
    }

    /** Worked answers: unit form 812 h, 75 %, 250th unit 82.10 h; cumulative form 120, 80 %, 230 done, next 55: 750.0. */
    @Test
    void learningCurveOfWorkedAnswers() {
        assertEquals(82.10, new LearningCurve(812, 0.75).at(250), 0.005);
        assertEquals(750.0, new LearningCurve(120, 0.8).next(230, 55), 0.05);
        assertThrows(IllegalArgumentException.class, () -> new LearningCurve(1, 1.2));
    }
}
