// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

/** Inserts on a ring against the published packings of circles, and the figures of the trade in a believable range. */
class MultiToolTest {

    private static final double N_PER_T = 9806.65;

    @Test
    @Validates(of = MultiTool.class, formulas = { "largestInsertMm", "ringRadiusMm" },
            source = "Kravitz, Mathematics Magazine 40 (1967), circles in a circle: ratio 2.1547, 2.4142, 2.7013, 3.0000 for "
                    + "3 to 6, from memory")
    @Validates(of = MultiTool.class, formulas = "tiltingMomentNm", source = "mechanics: 50 kN at 20 mm is 1000 Nm")
    void publishedPackings() {
        double[] ratio = { 2.1547, 2.4142, 2.7013, 3.0000 };
        for (int n = 3; n <= 6; n++) {
            assertEquals(100 / ratio[n - 3], MultiTool.largestInsertMm(100, n, 0), 0.01);
        }
        assertEquals(100.0 / 3, MultiTool.ringRadiusMm(100, 100.0 / 3, 0), 1e-9);
        assertEquals(1000, MultiTool.tiltingMomentNm(50_000, 20), 1e-9);
    }

    /** Neighbours and the rim keep the wall exactly. */
    @Test
    @Sweeps(of = MultiTool.class, formulas = { "largestInsertMm", "ringRadiusMm", "tiltingMomentNm" })
    void wallsAreKept() {
        Draw.many(81, 200, d -> {
            double outer = d.between(60, 160);
            int n = d.whole(2, 10);
            double wall = d.between(0, 4);
            double insert = MultiTool.largestInsertMm(outer, n, wall);
            double ring = MultiTool.ringRadiusMm(outer, insert, wall);
            assertEquals(insert + wall, 2 * ring * Math.sin(Math.PI / n), 1e-9);
            assertEquals(outer / 2, ring + insert / 2 + wall, 1e-9);
            assertTrue(insert > MultiTool.largestInsertMm(outer, n + 1, wall));
            assertTrue(MultiTool.tiltingMomentNm(1000, ring) < MultiTool.tiltingMomentNm(1000, ring + 1));
        });
    }

    /** Common practice, no source: 25 mm inserts in a holder of four, 20 mm in one of six: the same holder, within 5 %. */
    @Test
    void insertsOfTheTradeFitOneHolder() {
        double four = MultiTool.largestInsertMm(80, 4, 3);
        double six = MultiTool.largestInsertMm(80, 6, 3);
        assertEquals(25.0 / 20.0, four / six, 0.06 * 25 / 20);
        assertTrue(four >= 25 && four < 32 && six >= 20 && six < 25, four + " " + six);
    }

    /**
     * Common practice, no source: presses of about 28 t for single tools, 12 t in a multi-tool. What the trade punches daily must
     * fit, what it does not punch must not.
     */
    @Test
    void forcesLieInTheRangeOfTheTrade() {
        double single = 28 * N_PER_T;
        double inserts = 12 * N_PER_T;
        for (double d : List.of(25.0, 20.0, 16.0)) {
            double insert = 1.2 * PunchingForce.flatN(CutLength.roundMm(d), 3, 328);
            assertTrue(insert < inserts && insert > 0.25 * inserts, d + " mm insert in 3 mm mild steel: " + insert);
        }
        double parting = 1.2 * PunchingForce.flatN(CutLength.rectangleMm(30, 5, 0), 3, 328);
        assertTrue(parting < inserts && parting > 0.4 * inserts, "5 x 30 in 3 mm mild steel: " + parting);
        double turning = PunchingForce.flatN(CutLength.roundMm(105), 2, 328);
        assertTrue(turning < single && turning > 0.5 * single, "round 105 in 2 mm: " + turning);
        assertTrue(PunchingForce.flatN(CutLength.roundMm(105), 6, 328) > single, "round 105 in 6 mm needs more than the press");
        double bar = PunchingForce.flatN(CutLength.roundMm(11), 10, 240);
        assertTrue(bar < inserts, "11 mm in 10 mm copper bar: " + bar);
        assertTrue(SmallestFeature.byStressMm(10, 240, SmallestFeature.PERMITTED_STRESS_MPA) < 11);
    }

    @Test
    @Validates(of = AxisMotion.class, formulas = "seconds",
            source = "uniform acceleration by hand: v 1000, a 10 000: 1 mm 0.020, 10 mm 0.063246, 25 mm 0.1, 100 mm 0.2, 500 "
                    + "mm 0.6 s")
    void movesByHand() {
        Axis axis = new Axis(1000, 10_000);
        assertEquals(List.of(0.02, 0.063246, 0.1, 0.2, 0.6), List.of(1.0, 10.0, 25.0, 100.0, 500.0).stream()
                .map(s -> Math.rint(1e6 * AxisMotion.seconds(axis, s)) / 1e6).toList());
    }

    /** Small steps of time, accelerating as long as the way to stop allows. */
    @Test
    @Sweeps(of = AxisMotion.class, formulas = "seconds")
    void playedMotionAgrees() {
        Draw.many(82, 60, d -> {
            Axis axis = new Axis(d.between(500, 1800), d.between(4000, 15_000));
            double way = d.between(1, 900);
            double v = 0;
            double s = 0;
            double t = 0;
            double dt = 2e-6;
            while (s < way && t < 5) {
                double a = v * v / (2 * axis.accelerationMmPerS2()) >= way - s ? -axis.accelerationMmPerS2()
                        : v < axis.maxSpeedMmPerS() ? axis.accelerationMmPerS2() : 0;
                v = Math.max(1, v + a * dt);
                s += v * dt;
                t += dt;
            }
            assertEquals(t, AxisMotion.seconds(axis, way), 0.01 * t);
        });
    }
}
