// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Test;

/** Validation against the named books (from memory), a measured edge, and their own limits. */
class DieClearanceTest {

    /** t 2, tau 320: 0.1131; t 1.5, tau 600: 0.1162; t 4, tau 408: 0.2874; c 0.005 and 0.035. */
    @Test
    @Validates(of = DieClearance.class, formulas = "oehlerKaiserPerSideMm",
            source = "Oehler/Kaiser, Schnitt-, Stanz- und Ziehwerkzeuge, from memory; values worked by hand")
    void oehlerKaiser() {
        assertEquals(0.1131, DieClearance.oehlerKaiserPerSideMm(0.01, 2, 320), 1e-4);
        assertEquals(0.1162, DieClearance.oehlerKaiserPerSideMm(0.01, 1.5, 600), 1e-4);
        assertEquals(0.2874, DieClearance.oehlerKaiserPerSideMm(0.01, 4, 408), 1e-4);
        assertEquals(0.0566, DieClearance.oehlerKaiserPerSideMm(0.005, 2, 320), 1e-4);
        assertEquals(0.3960, DieClearance.oehlerKaiserPerSideMm(0.035, 2, 320), 1e-4);
    }

    /** Both branches give the same at 3 mm, for c = 0.01 only. */
    @Test
    void branchesMeetAtThreeMillimetres() {
        for (double tau = 50; tau < 700; tau += 50) {
            double below = DieClearance.oehlerKaiserPerSideMm(0.01, 3, tau);
            assertEquals(below, DieClearance.oehlerKaiserPerSideMm(0.01, 3 + 1e-9, tau), 1e-7);
        }
        double below = DieClearance.oehlerKaiserPerSideMm(0.02, 3, 320);
        assertTrue(Math.abs(below - DieClearance.oehlerKaiserPerSideMm(0.02, 3.0001, 320)) > 0.01);
    }

    @Test
    @Validates(of = DieClearance.class, formulas = { "allowancePerSideMm", "allowance" },
            source = "Groover, after ASM/SME, from memory: a 0.075, t 3.2: 0.24 mm per side; aluminium a 0.045, t 2: 0.09")
    @Validates(of = DieClearance.class, formulas = { "dieOfHoleMm", "punchOfBlankMm" },
            source = "Europa-Lehrmittel, Werkzeugbau: hole 20, u 0.12, die 20.24; Groover, from memory: blank 150, u 0.24, "
                    + "punch 149.52")
    @Validates(of = DieClearance.class, formulas = "reliefPerSideMm", source = "trigonometry: 1 degree over 10 mm, 0.1746")
    void allowanceAndSizes() {
        assertEquals(0.24, DieClearance.allowancePerSideMm(0.075, 3.2), 1e-12);
        assertEquals(0.09, DieClearance.allowancePerSideMm(DieClearance.allowance(MaterialGroup.ALUMINIUM), 2), 1e-12);
        assertEquals(20.24, DieClearance.dieOfHoleMm(20, 0.12), 1e-12);
        assertEquals(149.52, DieClearance.punchOfBlankMm(150, 0.24), 1e-12);
        assertEquals(0.1746, DieClearance.reliefPerSideMm(10, 1), 1e-4);
    }

    /** 20 % of 2 mm in all is 0.40 mm: arithmetic of the shop's custom. */
    @Test
    @Validates(of = DieClearance.class, formulas = { "percentTotalMm", "totalMm" },
            source = "arithmetic, 20 % of 2 mm in all 0.40; the three rules by hand: 0.22627, 0.24, 0.4")
    void percentAndSideBySide() {
        assertEquals(0.40, DieClearance.percentTotalMm(20, 2), 1e-12);
        Answer answer = Calculation.CLEARANCE.answer(Map.of("thickness", 2.0), PunchingForceTest.STEEL);
        assertEquals("clearance-root", answer.results().getFirst().key());
        assertEquals(0.22627, answer.figure("clearance-root").value(), 1e-5);
        assertEquals(0.24, answer.figure("clearance-allowance").value(), 1e-12);
        assertEquals(0.4, answer.figure("clearance-percent").value(), 1e-12);
        assertEquals(0.22627, DieClearance.totalMm(PunchingForceTest.STEEL, 2), 1e-5);
        assertEquals(0.24, DieClearance.totalMm(ClearanceRule.ALLOWANCE, PunchingForceTest.STEEL, 2), 1e-12);
    }

    @Test
    @Validates(of = DieClearance.class, formulas = "nearestMm", source = "by hand: of two equally near the wider")
    void nearestOnHandAndItsEffect() {
        assertEquals(0.3, DieClearance.nearestMm(List.of(0.1, 0.2, 0.3), 0.4));
        assertEquals(0.3, DieClearance.nearestMm(List.of(0.1, 0.3), 0.2));
        assertTrue(Double.isNaN(DieClearance.nearestMm(List.of(), 0.2)));
        assertEquals(PressReason.CLEARANCE_TIGHT, DieClearance.effect("x", 0.2, 0.4).getFirst().reason());
        assertEquals(PressReason.CLEARANCE_WIDE, DieClearance.effect("x", 0.6, 0.4).getFirst().reason());
        assertTrue(DieClearance.effect("x", 0.4, 0.4).isEmpty());
    }

    @Test
    @Validates(of = ClearanceCustom.class, formulas = "percent",
            source = "common practice, no source: mild steel t 2, 20 % in all, 0.40 mm")
    @Validates(of = EdgeQuality.class, formulas = { "burnishMm", "rolloverMm", "burrMm" },
            source = "stamping-design article: t 0.70, 5 and 9 % per side: burnish 0.53 and 0.38, rollover 0.07 and 0.09, "
                    + "burr near 10 % of t")
    void customAndMeasuredEdge() {
        assertEquals(0.40, DieClearance.percentTotalMm(ClearanceCustom.percent(MaterialGroup.MILD_STEEL, 2), 2), 1e-12);
        assertEquals(0.53, EdgeQuality.burnishMm(5, 0.70), 1e-12);
        assertEquals(0.38, EdgeQuality.burnishMm(9, 0.70), 1e-12);
        assertEquals(0.07, EdgeQuality.rolloverMm(5, 0.70), 1e-12);
        assertEquals(0.09, EdgeQuality.rolloverMm(9, 0.70), 1e-12);
        assertEquals(0.2, EdgeQuality.burrMm(2), 1e-12);
    }

    @Test
    @Sweeps(of = DieClearance.class, formulas = { "oehlerKaiserPerSideMm", "allowancePerSideMm", "percentTotalMm", "totalMm",
            "dieOfHoleMm",
        "punchOfBlankMm", "reliefPerSideMm" })
    void moreSheetOrStrengthNeverMeansLessClearance() {
        Draw.many(31, 400, d -> {
            double t = d.between(0.4, 7.5);
            double tau = d.between(60, 600);
            double here = DieClearance.oehlerKaiserPerSideMm(0.01, t, tau);
            assertTrue(here > 0 && here <= DieClearance.oehlerKaiserPerSideMm(0.01, t, tau + 20));
            assertTrue(here <= DieClearance.oehlerKaiserPerSideMm(0.01, t + 0.25, tau));
            assertEquals(2 * DieClearance.allowancePerSideMm(0.06, t), DieClearance.percentTotalMm(12, t), 1e-12);
            assertTrue(DieClearance.totalMm(PunchingForceTest.STEEL, t) < DieClearance.totalMm(PunchingForceTest.STEEL, t + 0.1));
            double size = d.between(3, 100);
            assertEquals(size, DieClearance.punchOfBlankMm(DieClearance.dieOfHoleMm(size, here), here), 1e-9);
            assertTrue(DieClearance.reliefPerSideMm(t, 1.5) > DieClearance.reliefPerSideMm(t, 0.25));
        });
    }

    @Test
    @Sweeps(of = DieClearance.class, formulas = { "nearestMm", "allowance" })
    void noneOnHandIsNearer() {
        Draw.many(32, 300, d -> {
            List<Double> hand = List.of(d.between(0.05, 1), d.between(0.05, 1), d.between(0.05, 1));
            double need = d.between(0.05, 1);
            double near = DieClearance.nearestMm(hand, need);
            hand.forEach(c -> assertTrue(Math.abs(near - need) <= Math.abs(c - need) + 1e-12));
        });
        for (MaterialGroup g : MaterialGroup.values()) {
            assertTrue(DieClearance.allowance(g) >= 0.045 && DieClearance.allowance(g) <= 0.08, "4 to 8 % a side (Illinois): "
                    + g);
        }
    }

    /** Thicker sheet never takes a smaller share, and wider dies never give more burnish or less rollover. */
    @Test
    @Sweeps(of = ClearanceCustom.class, formulas = "percent")
    @Sweeps(of = EdgeQuality.class, formulas = { "burnishMm", "rolloverMm", "burrMm" })
    void customAndEdgeAreMonotonic() {
        Draw.many(33, 300, d -> {
            MaterialGroup g = d.of(MaterialGroup.values());
            double t = d.between(0.4, 7);
            double p = ClearanceCustom.percent(g, t);
            assertTrue(p >= 10 && p <= 30 && p <= ClearanceCustom.percent(g, t + 0.5), g + " " + t);
            double q = d.between(3, 12);
            assertTrue(EdgeQuality.burnishMm(q, t) >= EdgeQuality.burnishMm(q + 0.5, t));
            assertTrue(EdgeQuality.rolloverMm(q, t) <= EdgeQuality.rolloverMm(q + 0.5, t));
            assertTrue(EdgeQuality.burnishMm(q, t) + EdgeQuality.rolloverMm(q, t) < t);
            assertTrue(EdgeQuality.burrMm(t) > 0 && EdgeQuality.burrMm(t) < EdgeQuality.burrMm(t + 0.1));
        });
    }

    @Test
    void theMaterialChoosesWhichRuleIsUsed() {
        for (ClearanceRule rule : ClearanceRule.values()) {
            Material m = new Material("M", "DC01", MaterialGroup.MILD_STEEL, 7.85, 270, 410, 320, rule, 20, 1, 1.0);
            Answer answer = Calculation.CLEARANCE.answer(Map.of("thickness", 2.0), m);
            assertEquals(DieClearance.totalMm(rule, m, 2), answer.results().getFirst().value(), 1e-12, rule.toString());
            assertEquals(answer.results().getFirst().value() / 2, answer.figure("per-side").value(), 1e-12, rule.toString());
        }
    }
}
