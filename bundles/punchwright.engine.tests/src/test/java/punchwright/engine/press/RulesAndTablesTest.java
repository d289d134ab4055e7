// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Test;

/** Validation of the smaller formulas and tables; sources beside each. */
class RulesAndTablesTest {

    @Test
    @Validates(of = StrippingForce.class, formulas = "byShareN",
            source = "press-tool course: 20 % of 100 800 N, 120 960 N in all")
    @Validates(of = StrippingForce.class, formulas = "byEdgeAreaN",
            source = "Machinery's Handbook, from memory: 3500 L t in lb and inch; L 100, t 2: 4 826 N")
    @Validates(of = StrippingForce.class, formulas = "share",
            source = "handbook range 3 to 20 %, mostly 10 %; soft sheet above it, common practice")
    void stripping() {
        assertEquals(20_160, StrippingForce.byShareN(100_800, 0.20), 1e-9);
        assertEquals(4826, StrippingForce.byEdgeAreaN(100, 2), 2);
        assertEquals(3500 * 4.4482216 / (25.4 * 25.4), StrippingForce.byEdgeAreaN(1, 1), 0.01);
        assertEquals(0.10, StrippingForce.share(MaterialGroup.MILD_STEEL, 0.4, 0.4), 1e-12);
        assertEquals(0.20, StrippingForce.share(MaterialGroup.MILD_STEEL, 0.1, 0.4), 1e-12);
        assertTrue(StrippingForce.share(MaterialGroup.ALUMINIUM, 0.4, 0.4) > 0.10);
        Map<String, Double> much = Map.of("length", 100.0, "thickness", 2.0, "share", 0.6);
        assertEquals(PressReason.RANGE, Calculation.STRIP.answer(much, PunchingForceTest.STEEL).findings().getFirst().reason());
    }

    @Test
    @Sweeps(of = StrippingForce.class, formulas = { "byShareN", "byEdgeAreaN", "share" })
    void tightDiesStripHarder() {
        Draw.many(61, 300, d -> {
            MaterialGroup g = d.of(MaterialGroup.values());
            double need = d.between(0.1, 1);
            double c = d.between(0.02, 1.5);
            double share = StrippingForce.share(g, c, need);
            assertTrue(share >= StrippingForce.share(g, c + 0.05, need) - 1e-12 && share >= 0.03 && share <= 0.40, g + " " + c);
            double f = d.between(1000, 300_000);
            assertTrue(StrippingForce.byShareN(f, share) < f);
            assertEquals(2 * StrippingForce.byEdgeAreaN(f, c), StrippingForce.byEdgeAreaN(f, 2 * c), 1e-6 * f);
        });
    }

    @Test
    @Validates(of = PunchWork.class, formulas = { "joule", "watt" },
            source = "Hellwig, Semlinger, Spanlose Fertigung, from memory: x 0.6, 100.8 kN, t 2: 120.96 J, 604.8 W at 300 a "
                    + "minute")
    void work() {
        assertEquals(120.96, PunchWork.joule(0.6, 100_800, 2), 1e-9);
        assertEquals(604.8, PunchWork.watt(120.96, 300, 1), 1e-9);
        Map<String, Double> much = Map.of("length", 100.0, "thickness", 2.0, "work-share", 0.9);
        assertEquals(PressReason.RANGE, Calculation.WORK.answer(much, PunchingForceTest.STEEL).findings().getFirst().reason());
    }

    /** Work is the area under the force over the way: a rectangle of x t; power its sum over a minute. */
    @Test
    @Sweeps(of = PunchWork.class, formulas = { "joule", "watt" })
    void workIsForceTimesWay() {
        Draw.many(62, 200, d -> {
            double f = d.between(1000, 300_000);
            double t = d.between(0.4, 8);
            double w = PunchWork.joule(0.5, f, t);
            assertTrue(w < f * t / 1000 && w > 0);
            assertEquals(60 * PunchWork.watt(w, 1, 1), w, 1e-9 * w);
            assertTrue(PunchWork.watt(w, 300, 0.5) > PunchWork.watt(w, 300, 0.9));
        });
    }

    @Test
    @Validates(of = SmallestFeature.class, formulas = { "byStressMm", "punchStressMPa" },
            source = "Oehler/Kaiser, from memory: t 2, tau 320, sigma 1500: 1.707; sigma 1600: 0.8 t; d 11, t 10, tau 240: "
                    + "872.7 MPa")
    @Validates(of = SmallestFeature.class, formulas = "bucklingN", source = "Euler: E 210 000, d 5, l 40, free end: 9935 N")
    @Validates(of = SmallestFeature.class, formulas = { "byCustomMm", "preferredMm" },
            source = "common practice 1.0 t mild steel, at least 1 mm; stamping-design articles: preferred 2 t, t 2: 4")
    @Validates(of = SmallestFeature.class, formulas = { "slotByStressMm", "slotByCustomMm" },
            source = "2 (l + w) t tau = sigma l w by hand: l 20, t 2, tau 320, sigma 1600: 0.8333; custom 1.0 to 1.5 t")
    void punchStress() {
        assertEquals(1.707, SmallestFeature.byStressMm(2, 320, 1500), 5e-4);
        assertEquals(0.80, SmallestFeature.byStressMm(1, 320, 1600), 1e-12);
        assertEquals(1.50, SmallestFeature.byStressMm(1, 600, 1600), 1e-12);
        double force = PunchingForce.flatN(CutLength.roundMm(11), 10, 240);
        assertEquals(82_938, force, 1);
        assertEquals(872.7, SmallestFeature.punchStressMPa(force, Math.PI * 121 / 4), 0.1);
        assertEquals(9935, SmallestFeature.bucklingN(5, 40, 2), 2);
        assertEquals(3, SmallestFeature.byCustomMm(PunchingForceTest.STEEL, 3));
        assertEquals(1, SmallestFeature.byCustomMm(PunchingForceTest.STEEL, 0.5));
        assertEquals(4, SmallestFeature.preferredMm(2));
        assertEquals(0.8333, SmallestFeature.slotByStressMm(20, 2, 320, 1600), 1e-4);
        double custom = SmallestFeature.slotByCustomMm(PunchingForceTest.STEEL, 2);
        assertTrue(custom >= 2 && custom <= 3);
    }

    /** At the least size the punch carries exactly what is permitted; a square is a slot of its own width. */
    @Test
    @Sweeps(of = SmallestFeature.class, formulas = { "byStressMm", "punchStressMPa", "bucklingN", "byCustomMm", "preferredMm",
        "slotByStressMm", "slotByCustomMm" })
    void theLeastSizeCarriesWhatIsPermitted() {
        Draw.many(63, 300, d -> {
            double t = d.between(0.4, 8);
            double tau = d.between(60, 600);
            double sigma = d.between(1000, 2200);
            double hole = SmallestFeature.byStressMm(t, tau, sigma);
            assertEquals(sigma, SmallestFeature.punchStressMPa(PunchingForce.flatN(CutLength.roundMm(hole), t, tau),
                    Math.PI / 4 * hole * hole), 1e-6 * sigma);
            assertEquals(hole, SmallestFeature.slotByStressMm(hole, t, tau, sigma), 1e-9 * hole);
            double slot = SmallestFeature.slotByStressMm(10 * hole, t, tau, sigma);
            assertTrue(slot < hole && slot > hole / 2);
            assertEquals(sigma, SmallestFeature.punchStressMPa(PunchingForce.flatN(2 * (10 * hole + slot), t, tau),
                    10 * hole * slot),
                    1e-6 * sigma);
            assertTrue(SmallestFeature.bucklingN(5, 40, 2) < SmallestFeature.bucklingN(5, 40, 0.7));
            assertTrue(SmallestFeature.byCustomMm(PunchingForceTest.STEEL, t) <= SmallestFeature.preferredMm(t) || t < 0.5);
            assertTrue(SmallestFeature.slotByCustomMm(PunchingForceTest.STEEL, t) >= SmallestFeature.byCustomMm(
                    PunchingForceTest.STEEL, t));
        });
    }

    @Test
    @Validates(of = WebRules.class, formulas = { "betterWebMm", "toBendMm", "leastEdgeMm", "leastWebMm", "betterEdgeMm",
            "toFormMm" },
            source = "stamping-design articles: edge 1 t; common practice: t 1.5 better web 3.0, bend with r 2 at 5.0, form 3 t")
    void webs() {
        assertEquals(3.0, WebRules.betterWebMm(1.5));
        assertEquals(5.0, WebRules.toBendMm(1.5, 2));
        assertEquals(2.0, WebRules.leastEdgeMm(2));
        assertEquals(1.0, WebRules.leastWebMm(0.5));
        assertEquals(3.0, WebRules.betterEdgeMm(2));
        assertEquals(4.5, WebRules.toFormMm(1.5));
        assertFalse(WebRules.check("x", 1.0, 1.5).isEmpty());
        assertTrue(WebRules.check("x", 1.5, 1.5).isEmpty());
    }

    @Test
    @Sweeps(of = WebRules.class, formulas = { "betterWebMm", "toBendMm", "leastEdgeMm", "leastWebMm", "betterEdgeMm",
            "toFormMm" })
    @Sweeps(of = CopperBar.class, formulas = { "leastHoleMm", "leastEdgeMm", "leastWebMm" })
    void betterIsNeverLessThanLeastAndThickerNeverLess() {
        Draw.many(64, 200, d -> {
            double t = d.between(0.4, 8);
            assertTrue(WebRules.betterWebMm(t) >= WebRules.leastWebMm(t) && WebRules.betterEdgeMm(t) >= WebRules.leastEdgeMm(t));
            assertTrue(WebRules.leastWebMm(t) <= WebRules.leastWebMm(t + 1));
            assertTrue(WebRules.toBendMm(t, 2) > WebRules.toBendMm(t, 1) && WebRules.toFormMm(t) > WebRules.leastWebMm(t) - 1);
            assertTrue(CopperBar.leastHoleMm(t) >= t && CopperBar.leastEdgeMm(t) >= t && CopperBar.leastWebMm(t) >= t);
        });
    }

    @Test
    @Validates(of = CopperBar.class, formulas = { "leastHoleMm", "leastEdgeMm", "leastWebMm" },
            source = "common practice, no source: hole, edge and web at least t; bar up to 10 mm")
    void copperBar() {
        assertEquals(10, CopperBar.leastHoleMm(10));
        assertEquals(10, CopperBar.leastEdgeMm(10));
        assertEquals(10, CopperBar.leastWebMm(10));
        assertTrue(CopperBar.check("x", 10, 11, 10, 10).isEmpty());
        assertEquals(3, CopperBar.check("x", 10, 9, 9, 9).size());
        assertEquals(PressReason.RANGE, CopperBar.check("x", 12, 0, 0, 0).getFirst().reason());
        assertTrue(CopperBar.applies(MaterialGroup.COPPER, 3) && !CopperBar.applies(MaterialGroup.COPPER, 2)
                && !CopperBar.applies(MaterialGroup.BRASS, 5));
    }

    @Test
    @Validates(of = LargestThickness.class, formulas = { "byForceMm", "byStressMm" },
            source = "a calculator page on punching force, turned round: 32 986.7 N, round 10, tau 350: 3.0 mm; "
                    + "Oehler/Kaiser: d 1.707, t 2")
    void largestThickness() {
        assertEquals(3.0, LargestThickness.byForceMm(32_986.7, CutLength.roundMm(10), 350, 1), 1e-4);
        assertEquals(2.0, LargestThickness.byStressMm(1.707, 320, 1500), 1e-3);
    }

    @Test
    @Sweeps(of = LargestThickness.class, formulas = { "byForceMm", "byStressMm" })
    void theLargestThicknessNeedsTheForceOnHand() {
        Draw.many(65, 200, d -> {
            double f = d.between(5_000, 300_000);
            double cut = d.between(10, 300);
            double tau = d.between(60, 600);
            double t = LargestThickness.byForceMm(f, cut, tau, 1.2);
            assertEquals(f, 1.2 * PunchingForce.flatN(cut, t, tau), 1e-6 * f);
            double size = d.between(1, 20);
            assertEquals(size, SmallestFeature.byStressMm(LargestThickness.byStressMm(size, tau, 1600), tau, 1600), 1e-9);
        });
    }

    /** ISO 2768-1, Table 1. */
    @Test
    void generalTolerances() {
        assertEquals(0.2, GeneralTolerance.MEDIUM.plusMinusMm(30.0).orElseThrow());
        assertEquals(0.3, GeneralTolerance.MEDIUM.plusMinusMm(30.1).orElseThrow());
        assertEquals(0.5, GeneralTolerance.MEDIUM.plusMinusMm(400).orElseThrow());
        assertEquals(1.2, GeneralTolerance.COARSE.plusMinusMm(400).orElseThrow());
        assertEquals(0.15, GeneralTolerance.FINE.plusMinusMm(100).orElseThrow());
        assertTrue(GeneralTolerance.FINE.plusMinusMm(2500).isEmpty());
        assertTrue(GeneralTolerance.VERY_COARSE.plusMinusMm(3).isEmpty());
        assertTrue(GeneralTolerance.MEDIUM.plusMinusMm(0.4).isEmpty());
        assertEquals(PressReason.NO_TOLERANCE, GeneralTolerance.FINE.check("x", 2500).getFirst().reason());
    }

    @Test
    void tolerancesGrowWithSizeAndClass() {
        for (double size = 3.5; size < 2000; size += 7) {
            double last = 0;
            for (GeneralTolerance c : GeneralTolerance.values()) {
                double now = c.plusMinusMm(size).orElseThrow();
                assertTrue(now > last - 1e-12 && now <= c.plusMinusMm(2000).orElseThrow(), c + " " + size);
                last = now;
            }
        }
    }

    @Test
    @Validates(of = ReachableTolerance.class, formulas = { "ofSizeMm", "ofDistanceMm" },
            source = "ISO/IEC Guide 98-3, 5.1.2, by hand: a 0.1 twice: 0.1414; with ISO 2768-1 at 100 mm class f, at 30 mm "
                    + "class m")
    @Validates(of = StampingTolerance.class, formulas = "lengthTable",
            source = "DIN 6930-2:2011-10, contents: Table 1 flat, Table 4 formed")
    void reachableClass() {
        double e = ReachableTolerance.ofDistanceMm(0.1, 0, 0, 0);
        assertEquals(0.1414, e, 1e-4);
        assertEquals(GeneralTolerance.FINE, ReachableTolerance.finest(100, e).orElseThrow());
        assertEquals(GeneralTolerance.MEDIUM, ReachableTolerance.finest(30, e).orElseThrow());
        assertTrue(ReachableTolerance.finest(30, 5).isEmpty());
        assertEquals(0.12, ReachableTolerance.ofSizeMm(0.02, 0.1), 1e-12);
        assertEquals(1, StampingTolerance.lengthTable(false));
        assertEquals(4, StampingTolerance.lengthTable(true));
        StampingTolerance own = new StampingTolerance(List.of(new StampingTolerance.Row(0, 6, 0, 1, 0.1)));
        assertEquals(0.1, own.plusMinusMm(6, 1).orElseThrow());
        assertTrue(own.plusMinusMm(6.1, 1).isEmpty() && own.plusMinusMm(6, 1.1).isEmpty());
    }

    @Test
    @Sweeps(of = ReachableTolerance.class, formulas = { "ofSizeMm", "ofDistanceMm" })
    @Sweeps(of = StampingTolerance.class, formulas = "lengthTable")
    void worseMachinesReachNoFinerClass() {
        Draw.many(66, 300, d -> {
            double a = d.between(0, 0.3);
            double b = d.between(0, 0.2);
            double e = ReachableTolerance.ofDistanceMm(a, b, 0.02, 0.05);
            assertTrue(e >= ReachableTolerance.ofSizeMm(0.02, 0.05) && e <= 1.415 * (a + b) + 0.07 + 1e-9);
            double size = d.between(7, 1900);
            int here = ReachableTolerance.finest(size, e).map(Enum::ordinal).orElse(9);
            int worse = ReachableTolerance.finest(size, e + 0.1).map(Enum::ordinal).orElse(9);
            assertTrue(here <= worse);
            assertTrue(StampingTolerance.lengthTable(a > b) == 1 || StampingTolerance.lengthTable(a > b) == 4);
        });
    }

    @Test
    @Validates(of = SlugPulling.class, formulas = { "vacuumN", "weightN" },
            source = "ISO 2533 standard atmosphere, 101 325 Pa: round 10: 7.96 N; standard gravity: 1000 mm2 of 1 mm steel: "
                    + "0.077 N")
    void slugs() {
        assertEquals(7.96, SlugPulling.vacuumN(Math.PI * 25), 0.005);
        assertEquals(0.077, SlugPulling.weightN(1000, 1, 7.85), 5e-4);
        List<SlugPulling.Cause> two = SlugPulling.causes(MaterialGroup.ALUMINIUM, 0.8, 10, 0.1, 0.1, false);
        assertEquals(List.of(SlugPulling.Cause.THIN_SHEET, SlugPulling.Cause.SOFT_SHEET), two);
        assertTrue(SlugPulling.check("x", two).getFirst().message().contains("thin sheet"));
        assertTrue(SlugPulling.check("x", two.subList(0, 1)).isEmpty());
    }

    /** The pull of a film is far above the slug's weight, and more clearance or less sheet never takes a cause away. */
    @Test
    @Sweeps(of = SlugPulling.class, formulas = { "vacuumN", "weightN" })
    void slugCausesGrow() {
        Draw.many(67, 300, d -> {
            double area = d.between(1, 2000);
            double t = d.between(0.4, 6);
            assertTrue(SlugPulling.vacuumN(area) > 10 * SlugPulling.weightN(area, t, 8.9));
            double c = d.between(0.05, 1);
            MaterialGroup g = d.of(MaterialGroup.values());
            assertTrue(SlugPulling.causes(g, t, 8, c + 0.1, 0.3, true).containsAll(SlugPulling.causes(g, t, 8, c, 0.3, false)));
        });
    }
}
