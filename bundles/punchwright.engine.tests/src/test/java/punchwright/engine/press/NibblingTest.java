// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;

import org.junit.jupiter.api.Test;

/** Validation by hand; the least number of hits proven by trying one less. */
class NibblingTest {

    @Test
    @Validates(of = Nibbling.class, formulas = { "straightHits", "openingHits", "discHits", "insideArcHits", "outsideArcHits" },
            source = "plane geometry by hand: r 10, h 0.1: p 2.821347, so 37 hits for 100 mm; R 50: 100 hits inside, 123 "
                    + "outside; "
                    + "corner R 5, r 3, h 0.05, 90 degrees: 6 hits")
    void hitsByHand() {
        assertEquals(37, Nibbling.straightHits(100, 10, 0.1));
        assertEquals(100, Nibbling.openingHits(50, 10, 0.1));
        assertEquals(123, Nibbling.discHits(50, 10, 0.1));
        assertEquals(6, Nibbling.insideArcHits(5, 90, 3, 0.05));
        assertEquals((int) Math.ceil(90 / 2.94847) + 1, Nibbling.outsideArcHits(50, 90, 10, 0.1));
        assertEquals(1, Nibbling.openingHits(10, 10, 0.1));
        assertEquals(1, Nibbling.insideArcHits(10, 90, 10, 0.1));
    }

    /** With the hits told the scallop is kept; with one hit less it is not. */
    @Test
    @Sweeps(of = Nibbling.class, formulas = { "straightHits", "openingHits", "discHits", "insideArcHits", "outsideArcHits" })
    void oneHitLessBreaksTheScallop() {
        Draw.many(41, 500, d -> {
            double r = d.between(2, 20);
            double h = d.between(0.02, 0.3);
            double length = d.between(20, 400);
            int n = Nibbling.straightHits(length, r, h);
            assertTrue(Scallop.straightMm(r, length / (n - 1)) <= h + 1e-6);
            assertTrue(n == 2 || length / (n - 2) > 2 * r || Scallop.straightMm(r, length / (n - 2)) > h);
            double arc = r * d.between(1.5, 12);
            int in = Nibbling.openingHits(arc, r, h);
            assertTrue(Scallop.insideMm(arc, r, 2 * Math.PI / in) <= h + 1e-6);
            assertTrue(in < 8 || Scallop.insideMm(arc, r, 2 * Math.PI / (in - 1)) > h - 1e-6);
            int out = Nibbling.discHits(arc, r, h);
            assertTrue(Scallop.outsideMm(arc, r, 2 * Math.PI / out) <= h + 1e-6);
            assertTrue(Scallop.outsideMm(arc, r, 2 * Math.PI / (out - 1)) > h - 1e-6);
            assertTrue(out >= in, "an outside arc needs at least as many hits");
            assertTrue(Nibbling.insideArcHits(arc, 90, r, h) <= in + 1 && Nibbling.outsideArcHits(arc, 90, r, h) <= out + 1);
        });
    }

    @Test
    @Validates(of = HitCount.class, formulas = { "along", "pitchMm", "steps", "outline", "lastStepMm", "unevenLastStepMm" },
            source = "arithmetic by hand: L 500, a 50, o 2: 11 hits at 45; 98 gives 2, 98.01 gives 3; 100 x 80 with 30 x 30: "
                    + "outline 10")
    void hitsAlongACut() {
        assertEquals(11, HitCount.along(500, 50, 2));
        assertEquals(45, HitCount.pitchMm(500, 50, 11), 1e-12);
        assertEquals(1, HitCount.along(50, 50, 2));
        assertEquals(2, HitCount.along(98, 50, 2));
        assertEquals(3, HitCount.along(98.01, 50, 2));
        assertEquals(4, HitCount.along(100, 30, 2));
        assertEquals(3, HitCount.along(80, 30, 2));
        assertEquals(3, HitCount.steps(0.6, 0.2));
        assertEquals(10, HitCount.outline(4, 3));
        assertEquals(4, HitCount.outline(4, 1));
        assertEquals(24.005, HitCount.lastStepMm(98.01, 50, 2), 1e-9);
        assertEquals(0.01, HitCount.unevenLastStepMm(98.01, 50, 2), 1e-9);
    }

    /** Walks the steps: the end is reached exactly, no overlap is below the least, and one hit less does not reach. */
    @Test
    @Sweeps(of = HitCount.class, formulas = { "along", "pitchMm", "steps", "outline", "lastStepMm", "unevenLastStepMm" })
    void equalStepsReachTheEndWithoutASliver() {
        Draw.many(42, 1000, d -> {
            double a = d.between(5, 80);
            double o = d.between(0, 0.3) * a;
            double l = a + d.between(0.001, 600);
            int n = HitCount.along(l, a, o);
            double p = HitCount.pitchMm(l, a, n);
            double at = a;
            for (int i = 1; i < n; i++) {
                at += p;
            }
            assertEquals(l, at, 1e-6);
            assertTrue(a - p >= o - 1e-6, "overlap");
            assertTrue(a + (n - 2) * (a - o) < l, "one hit less");
            assertEquals(p, HitCount.lastStepMm(l, a, o), 1e-12);
            double rest = HitCount.unevenLastStepMm(l, a, o);
            assertTrue(rest > 0 && rest <= a - o + 1e-6 && rest <= HitCount.lastStepMm(l, a, o) + 1e-9);
            assertEquals(HitCount.steps(l - a, a - o) + 1, n);
            int ny = d.whole(1, 9);
            assertTrue(HitCount.outline(n, ny) <= n * ny && HitCount.outline(n, ny) >= Math.max(n, ny));
        });
    }

    @Test
    void aPitchBelowHalfTheSheetAndASliverAreTold() {
        Answer small = Calculation.NIBBLE.answer(Map.of("tool", 6.0, "scallop", 0.01, "thickness", 3.0), PunchingForceTest.STEEL);
        assertEquals(PressReason.PITCH_SMALL, small.findings().getFirst().reason());
        Answer sliver = Calculation.SLIT.answer(Map.of("length", 51.0, "tool", 50.0, "thickness", 3.0), PunchingForceTest.STEEL);
        assertTrue(sliver.findings().stream().anyMatch(f -> f.reason() == PressReason.SLIVER), sliver.findings().toString());
        Answer good = Calculation.SLIT.answer(Map.of("length", 500.0, "tool", 50.0, "overlap", 2.0, "thickness", 3.0),
                PunchingForceTest.STEEL);
        assertTrue(good.findings().isEmpty(), good.findings().toString());
        assertEquals(11, good.figure("hits").value());
        assertEquals(45, good.figure("even-pitch").value(), 1e-9);
    }
}
