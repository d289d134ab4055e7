// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

/** Validation of forming forces, distances, collars, threads and countersinks; sources beside each check. */
class FormingForceTest {

    @Test
    @Validates(of = FormingForce.class, formulas = "coiningN", source = "common practice, factor 2: A 50 mm2, Rm 400: 40 kN")
    @Validates(of = FormingForce.class, formulas = { "lanceN", "embossN" },
            source = "common practice, no source: lance 1.3 to 1.5 times its cut; emboss 0.5 to 1 times L t Rm")
    @Validates(of = FormingForce.class, formulas = "collarN",
            source = "Lange, Umformtechnik, from memory: 1.1 pi t Rm (D - d0) by hand, D 8, d0 5, t 1.5, Rm 400: 6 220 N")
    void forces() {
        assertEquals(40_000, FormingForce.coiningN(50, 400), 1e-9);
        double cut = PunchingForce.flatN(60, 1.5, 320);
        double lance = FormingForce.lanceN(60, 1.5, 320);
        assertTrue(lance >= 1.3 * cut && lance <= 1.5 * cut);
        double emboss = FormingForce.embossN(30, 1, 400);
        assertTrue(emboss >= 0.5 * 30 * 400 && emboss <= 30 * 400);
        assertEquals(6_220, FormingForce.collarN(8, 5, 1.5, 400), 1);
    }

    @Test
    @Sweeps(of = FormingForce.class, formulas = { "lanceN", "embossN", "coiningN", "collarN" })
    void forcesGrowWithSheetAndSize() {
        Draw.many(51, 300, d -> {
            double l = d.between(3, 100);
            double t = d.between(0.4, 4);
            double rm = d.between(100, 800);
            assertTrue(FormingForce.lanceN(l, t, rm) > PunchingForce.flatN(l, t, rm), "a lance cuts and forms");
            assertEquals(2 * FormingForce.embossN(l, t, rm), FormingForce.embossN(2 * l, t, rm), 1e-6);
            assertTrue(FormingForce.coiningN(l, rm) > l * rm, "coining flows, so above Rm");
            double core = d.between(0.4, 0.9) * l;
            assertTrue(FormingForce.collarN(l, core, t, rm) > FormingForce.collarN(l, core + 0.05 * l, t, rm));
            assertEquals(0, FormingForce.collarN(l, l, t, rm), 1e-9);
        });
    }

    @Test
    @Validates(of = FormingRules.class, formulas = "halfShearLimitMm",
            source = "course notes on press tools, penetration 38 %: t 3 mild steel, 1.14 mm")
    @Validates(of = FormingRules.class, formulas = { "highestLouvreMm", "louvrePitchMm", "toNextHitMm", "toClampMm" },
            source = "common practice, no source: louvre 3 t high, pitch w + 4 t; next hit half the die; clamp its dead zone "
                    + "more")
    void rulesOfForms() {
        assertEquals(1.14, FormingRules.halfShearLimitMm(MaterialGroup.MILD_STEEL, 3), 1e-12);
        assertEquals(4.5, FormingRules.highestLouvreMm(1.5));
        assertEquals(16, FormingRules.louvrePitchMm(10, 1.5));
        assertEquals(20, FormingRules.toNextHitMm(40));
        assertEquals(32, FormingRules.toClampMm(40, 12));
        assertEquals(List.of(3, 0, 2, 1), FormingRules.order(List.of(3.0, -1.0, 6.0, 2.0)));
        assertTrue(FormingRules.passes(-3, 3) && !FormingRules.passes(3.1, 3));
        assertEquals(PressReason.FORM_NEAR, FormingRules.checkNeighbour("x", 2.9, 1).getFirst().reason());
        assertTrue(FormingRules.checkNeighbour("x", 3, 1).isEmpty());
        assertEquals(PressReason.FORM_HIGH, FormingRules.checkHeight("x", -5, 4.5).getFirst().reason());
    }

    /** Louvre 6 high in t 1.5: twice 4.5 reach it; a press for 6 mm leaves 4.5 over a sheet of 1.5. */
    @Test
    @Validates(of = FormingRules.class, formulas = { "keepClearMm", "toOwnNeighbourMm", "hits", "compare",
            "beadOverlapMm" }, source = "common practice, no source: 3 t from hole to form, half the die; louvres w + 4 t apart; 3 t in one hit; "
                    + "upward before downward, low before high; three quarters of a roller")
    @Validates(of = FormingRules.class, formulas = "clearAboveMm",
            source = "geometry by hand: a gap that takes 6 mm leaves 4.5 over a sheet of 1.5")
    void roomAroundForms() {
        assertEquals(4.5, FormingRules.keepClearMm(0, 0, 4, 1.5));
        assertEquals(16, FormingRules.keepClearMm(0, 40, 4, 1.5));
        assertEquals(7, FormingRules.keepClearMm(7, 40, 4, 1.5));
        assertEquals(6, FormingRules.toOwnNeighbourMm(1.5));
        assertEquals(2, FormingRules.hits(6, FormingRules.highestLouvreMm(1.5)));
        assertEquals(1, FormingRules.hits(-4.5, FormingRules.highestLouvreMm(1.5)));
        assertEquals(15, FormingRules.beadOverlapMm(20));
        assertEquals(4.5, FormingRules.clearAboveMm(0, 6, 1.5));
        assertEquals(12, FormingRules.clearAboveMm(12, 6, 1.5));
        assertTrue(FormingRules.compare(8, -1) < 0 && FormingRules.compare(2, 3) < 0 && FormingRules.compare(-3, -2) > 0);
    }

    @Test
    @Sweeps(of = FormingRules.class, formulas = { "keepClearMm", "toOwnNeighbourMm", "hits", "compare", "clearAboveMm",
            "beadOverlapMm" })
    void roomGrowsWithSheetAndDie() {
        Draw.many(55, 200, d -> {
            double t = d.between(0.4, 4);
            double die = d.between(0, 120);
            double half = d.between(2, 40);
            double keep = FormingRules.keepClearMm(0, die, half, t);
            assertTrue(keep >= WebRules.toFormMm(t) && half + keep >= FormingRules.toNextHitMm(die) - 1e-12);
            assertTrue(FormingRules.keepClearMm(0, die + 5, half, t + 0.1) > keep);
            assertEquals(FormingRules.louvrePitchMm(half, t) - half, FormingRules.toOwnNeighbourMm(t), 1e-12);
            double high = d.between(0.1, 20);
            int hits = FormingRules.hits(high, FormingRules.highestLouvreMm(t));
            assertTrue(hits * 3 * t >= high - 1e-9 && (hits - 1) * 3 * t < high);
            double other = d.between(-20, 20);
            assertEquals(-Integer.signum(FormingRules.compare(high, other)), Integer.signum(FormingRules.compare(other, high)));
            assertEquals(6 - t, FormingRules.clearAboveMm(0, 6, t), 1e-12);
            assertTrue(FormingRules.beadOverlapMm(die) <= die && FormingRules.beadOverlapMm(die) >= die / 2);
        });
    }

    @Test
    @Sweeps(of = FormingRules.class, formulas = { "halfShearLimitMm", "highestLouvreMm", "louvrePitchMm", "toNextHitMm",
            "toClampMm" })
    void distancesGrow() {
        Draw.many(52, 200, d -> {
            double t = d.between(0.4, 4);
            double die = d.between(10, 120);
            assertTrue(FormingRules.halfShearLimitMm(d.of(MaterialGroup.values()), t) < t);
            assertTrue(FormingRules.highestLouvreMm(t) < FormingRules.highestLouvreMm(t + 0.1));
            assertTrue(FormingRules.louvrePitchMm(die, t) > die);
            assertTrue(FormingRules.toClampMm(die, 12) > FormingRules.toNextHitMm(die));
            assertEquals(2 * FormingRules.toNextHitMm(die), die, 1e-12);
            List<Double> heights = List.of(d.between(-9, 9), d.between(-9, 9), d.between(-9, 9), d.between(-9, 9));
            List<Integer> order = FormingRules.order(heights);
            for (int i = 1; i < order.size(); i++) {
                double before = heights.get(order.get(i - 1));
                double now = heights.get(order.get(i));
                assertTrue(before > 0 && now < 0 || before * now > 0 && Math.abs(before) <= Math.abs(now));
            }
        });
    }

    /** D 10, H 4, r 1, t 1.5: 5.02, stretch 1.99: too far. M5: three pitches 2.4 mm, so t 1.5 needs a collar. */
    @Test
    @Validates(of = ThreadCollar.class, formulas = { "coreMm", "stretch", "largestStretch" },
            source = "Lange; Romanowski, from memory: D 10, H 4, r 1, t 1.5: d0 5.02, stretch 1.99 above 1.7")
    @Validates(of = ThreadCollar.class, formulas = { "leastHeightMm", "highestMm" },
            source = "common practice, no source: three pitches, M5 2.4 mm; at most 2.5 t")
    @Validates(of = ThreadCollar.class, formulas = "ironedCoreMm",
            source = "constant volume by hand: do 6, di 4, H 3, t 2: sqrt(6)")
    void collars() {
        assertEquals(5.02, ThreadCollar.coreMm(10, 4, 1, 1.5), 0.005);
        assertEquals(1.99, ThreadCollar.stretch(10, 5.02), 0.005);
        assertEquals(1.7, ThreadCollar.largestStretch(MaterialGroup.MILD_STEEL));
        assertEquals(PressReason.STRETCH,
                ThreadCollar.check("x", MaterialGroup.MILD_STEEL, 10, 5.02, 0, 1.5).getFirst().reason());
        assertEquals(2.4, ThreadCollar.leastHeightMm(0.8), 1e-12);
        assertEquals(3.75, ThreadCollar.highestMm(1.5), 1e-12);
        assertEquals(Math.sqrt(6), ThreadCollar.ironedCoreMm(4, 6, 3, 2), 1e-12);
        assertEquals(0, ThreadCollar.ironedCoreMm(4, 6, 12, 2));
    }

    /** A higher collar needs a smaller hole; the volume of an ironed collar is that of the ring it came from. */
    @Test
    @Sweeps(of = ThreadCollar.class, formulas = { "coreMm", "ironedCoreMm", "stretch", "largestStretch", "leastHeightMm",
            "highestMm" })
    void higherCollarsNeedSmallerHoles() {
        Draw.many(53, 300, d -> {
            double t = d.between(0.5, 4);
            double inner = d.between(2, 8);
            double outer = inner + d.between(0.3, 1.2) * t;
            double h = d.between(1, 2.5) * t;
            assertTrue(ThreadCollar.coreMm(outer, h, 0.5, t) > ThreadCollar.coreMm(outer, h + 0.2, 0.5, t));
            double core = ThreadCollar.ironedCoreMm(inner, outer, h, t);
            if (core > 0) {
                assertEquals((outer * outer - inner * inner) * h, (outer * outer - core * core) * t, 1e-9 * outer * outer * t
                        + 1e-9);
                assertTrue(core <= inner + 1e-9 && ThreadCollar.stretch(outer, core) > 1);
            }
            assertTrue(ThreadCollar.highestMm(t) > t && ThreadCollar.leastHeightMm(t) > t);
            assertTrue(ThreadCollar.largestStretch(d.of(MaterialGroup.values())) >= 1.5);
        });
    }

    /**
     * DIN 336 (from memory): d - P; ISO 273 medium; DIN 7500-2: M4 in 1.5 mm 3.6, M5 in 4 mm 4.55, M6 in 3 mm 5.45, M8 in 4 mm
     * 7.3.
     */
    @Test
    void threadTables() {
        for (ThreadSize s : ThreadSize.values()) {
            assertEquals(s.diameterMm() - s.pitchMm(), s.cutCoreMm(), 0.051, s.toString());
            assertTrue(s.rolledCoreMm() > s.cutCoreMm() && s.rolledCoreMm() < s.diameterMm(), s.toString());
            assertTrue(s.throughMediumMm() > s.diameterMm(), s.toString());
            assertTrue(s.formingHoleMm(1) <= s.formingHoleMm(9), s.toString());
            assertTrue(s.formingHoleMm(3) > s.cutCoreMm() && s.formingHoleMm(3) < s.diameterMm(), s.toString());
        }
        assertEquals(List.of(2.5, 3.3, 4.2, 5.0), List.of(ThreadSize.M3.cutCoreMm(), ThreadSize.M4.cutCoreMm(),
                ThreadSize.M5.cutCoreMm(), ThreadSize.M6.cutCoreMm()));
        assertEquals(List.of(3.4, 4.5, 5.5, 6.6), List.of(ThreadSize.M3.throughMediumMm(), ThreadSize.M4.throughMediumMm(),
                ThreadSize.M5.throughMediumMm(), ThreadSize.M6.throughMediumMm()));
        assertEquals(3.6, ThreadSize.M4.formingHoleMm(1.5));
        assertEquals(4.55, ThreadSize.M5.formingHoleMm(4));
        assertEquals(5.45, ThreadSize.M6.formingHoleMm(3));
        assertEquals(7.3, ThreadSize.M8.formingHoleMm(4));
        assertTrue(ThreadSize.of(7).isEmpty());
    }

    @Test
    @Validates(of = Countersink.class, formulas = { "depthMm", "leastThicknessMm", "volumeMm3", "holeBeforeMm" },
            source = "solid geometry by hand: head 9.2, hole 4.5, 90 degrees: 2.35 deep, t at least 2.61; cone 2, 0, 1 deep: "
                    + "pi / 3")
    void countersinks() {
        assertEquals(2.35, Countersink.depthMm(9.2, 4.5, 90), 1e-12);
        assertEquals(2.611, Countersink.leastThicknessMm(2.35), 1e-3);
        assertEquals(Math.PI / 3, Countersink.volumeMm3(2, 0, 1), 1e-12);
        assertEquals(2, Countersink.holeBeforeMm(0, Math.PI, 1), 1e-12);
        assertFalse(Countersink.check("x", 2.35, 2.6).isEmpty());
        assertTrue(Countersink.check("x", 2.35, 2.62).isEmpty());
    }

    /** The volume pressed aside by slices of a cone, and the ring of the hole punched first holds as much. */
    @Test
    @Sweeps(of = Countersink.class, formulas = { "depthMm", "leastThicknessMm", "volumeMm3", "holeBeforeMm" })
    void slicesOfTheConeAgree() {
        Draw.many(54, 100, d -> {
            double hole = d.between(2, 10);
            double head = hole + d.between(1, 10);
            double depth = Countersink.depthMm(head, hole, d.between(60, 120));
            double slices = 0;
            int n = 2000;
            for (int i = 0; i < n; i++) {
                double across = head + (hole - head) * (i + 0.5) / n;
                slices += Math.PI / 4 * (across * across - hole * hole) * depth / n;
            }
            double volume = Countersink.volumeMm3(head, hole, depth);
            assertEquals(slices, volume, 1e-4 * volume);
            double t = Countersink.leastThicknessMm(depth);
            assertTrue(t > depth);
            double before = Countersink.holeBeforeMm(hole, volume, t);
            assertEquals(volume, Math.PI / 4 * (before * before - hole * hole) * t, 1e-9 * volume);
            assertTrue(Countersink.depthMm(head, hole, 60) > Countersink.depthMm(head, hole, 90));
        });
    }
}
