// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Validation of the smaller formulas and tables; sources beside each. */
class RulesAndTablesTest {

    /** Press-tool course: 20 % of 100 800 N. Machinery's Handbook (from memory): 3500 L t in lb and inch, L 100, t 2. */
    @Test
    void stripping() {
        assertEquals(20_160, StrippingForce.byShareN(100_800, 0.20), 1e-9);
        assertEquals(4826, StrippingForce.byEdgeAreaN(100, 2), 2);
        assertEquals(3500 * 4.4482216 / (25.4 * 25.4), StrippingForce.byEdgeAreaN(1, 1), 0.01);
        assertEquals(PressReason.RANGE, StrippingForce.figure(1000, 0.6).findings().getFirst().reason());
    }

    @Test
    void tightDiesStripHarder() {
        assertEquals(0.10, StrippingForce.share(MaterialGroup.MILD_STEEL, 0.4, 0.4), 1e-12);
        assertEquals(0.20, StrippingForce.share(MaterialGroup.MILD_STEEL, 0.1, 0.4), 1e-12);
        assertTrue(StrippingForce.share(MaterialGroup.ALUMINIUM, 0.4, 0.4) > 0.10);
    }

    /** Hellwig, Semlinger, Spanlose Fertigung, from memory: x 0.6, 100.8 kN, t 2: 120.96 J, 604.8 W at 300 a minute. */
    @Test
    void work() {
        assertEquals(120.96, PunchWork.joule(0.6, 100_800, 2), 1e-9);
        assertEquals(604.8, PunchWork.watt(120.96, 300, 1), 1e-9);
        assertEquals(PressReason.RANGE, PunchWork.figure(0.9, 1000, 2).findings().getFirst().reason());
    }

    /** Oehler/Kaiser, from memory: t 2, tau 320, sigma 1500: 1.707; sigma 1600: 0.8 t; d 11, t 10, tau 240: 872.7 MPa. */
    @Test
    void punchStress() {
        assertEquals(1.707, SmallestFeature.byStressMm(2, 320, 1500), 5e-4);
        assertEquals(0.80, SmallestFeature.byStressMm(1, 320, 1600), 1e-12);
        assertEquals(1.50, SmallestFeature.byStressMm(1, 600, 1600), 1e-12);
        double force = PunchingForce.flatN(CutLength.roundMm(11), 10, 240);
        assertEquals(82_938, force, 1);
        assertEquals(872.7, SmallestFeature.punchStressMPa(force, Math.PI * 121 / 4), 0.1);
    }

    /** Euler: E 210 000, d 5, l 40, free end: 9935 N. */
    @Test
    void buckling() {
        assertEquals(9935, SmallestFeature.bucklingN(5, 40, 2), 2);
    }

    /** Common practice: t 1.5 better web 3.0, bend with r 2 at 5.0; articles: edge 1 t. */
    @Test
    void webs() {
        assertEquals(3.0, WebRules.betterWebMm(1.5));
        assertEquals(5.0, WebRules.toBendMm(1.5, 2));
        assertEquals(2.0, WebRules.leastEdgeMm(2));
        assertEquals(1.0, WebRules.leastWebMm(0.5));
        assertFalse(WebRules.check("x", 1.0, 1.5).isEmpty());
        assertTrue(WebRules.check("x", 1.5, 1.5).isEmpty());
    }

    /** Arithmetic: L 500, a 50, o 2: 11 hits at 45; 98 gives 2; 98.01 gives 3; 100 x 80 with 30 x 30: 4 and 3. */
    @Test
    void hitCounts() {
        assertEquals(11, HitCount.along(500, 50, 2));
        assertEquals(45, HitCount.pitchMm(500, 50, 11), 1e-12);
        assertEquals(1, HitCount.along(50, 50, 2));
        assertEquals(2, HitCount.along(98, 50, 2));
        assertEquals(3, HitCount.along(98.01, 50, 2));
        assertEquals(4, HitCount.along(100, 30, 2));
        assertEquals(3, HitCount.along(80, 30, 2));
        assertEquals(3, HitCount.steps(0.6, 0.2));
    }

    /** Arithmetic: (180 + 10 * 6) / (11 * 60 000). */
    @Test
    void life() {
        assertEquals(240 / 660_000.0, ToolLife.costPerHit(180, 0, 10, 6, 60_000), 1e-15);
        assertEquals(-500, ToolLife.hitsLeft(50_000, 0.5, 25_500), 1e-9);
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
}
