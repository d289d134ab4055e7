// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Validation: plane geometry worked independently, and a sampled boundary. */
class ScallopTest {

    /** r 10: p 5, 8, 3; r 12.5: p 4. */
    @Test
    @Validates(of = Scallop.class, formulas = { "straightMm", "straightPitchMm" }, source = "plane geometry by hand")
    void straightEdge() {
        assertEquals(0.317542, Scallop.straightMm(10, 5), 1e-6);
        assertEquals(0.834849, Scallop.straightMm(10, 8), 1e-6);
        assertEquals(0.161037, Scallop.straightMm(12.5, 4), 1e-6);
        assertEquals(0.113140, Scallop.straightMm(10, 3), 1e-6);
        assertEquals(2.821347, Scallop.straightPitchMm(10, 0.1), 1e-6);
        assertEquals(3.979950, Scallop.straightPitchMm(10, 0.2), 1e-6);
        assertEquals(1.989975, Scallop.straightPitchMm(5, 0.1), 1e-6);
        assertEquals(1.99750, Scallop.straightPitchMm(10, 0.05), 1e-5);
    }

    /** R 50, r 10, 4 degrees; h 0.1 gives 3.61840 degrees and 100 hits, real height 0.098982. */
    @Test
    @Validates(of = Scallop.class, formulas = { "insideMm", "insideStepRad" }, source = "law of cosines by hand")
    void insideArc() {
        assertEquals(0.122284, Scallop.insideMm(50, 10, Math.toRadians(4)), 1e-6);
        double step = Scallop.insideStepRad(50, 10, 0.1);
        assertEquals(3.61840, Math.toDegrees(step), 1e-5);
        assertEquals(100, HitCount.steps(2 * Math.PI, step));
        assertEquals(0.098982, Scallop.insideMm(50, 10, 2 * Math.PI / 100), 1e-6);
    }

    /** R 50, r 10, 4 degrees; h 0.1 gives 2.94847 degrees and 123 hits, real height 0.098527. */
    @Test
    @Validates(of = Scallop.class, formulas = { "outsideMm", "outsideStepRad" }, source = "law of cosines by hand")
    void outsideArc() {
        assertEquals(0.185142, Scallop.outsideMm(50, 10, Math.toRadians(4)), 1e-6);
        double step = Scallop.outsideStepRad(50, 10, 0.1);
        assertEquals(2.94847, Math.toDegrees(step), 1e-5);
        assertEquals(123, HitCount.steps(2 * Math.PI, step));
        assertEquals(0.098527, Scallop.outsideMm(50, 10, 2 * Math.PI / 123), 1e-6);
    }

    /** Corner R 5, r 3, h 0.05 over a quarter turn: 19.8895 degrees, 6 hits with both ends. */
    @Test
    void cornerOfAnOpening() {
        double step = Scallop.insideStepRad(5, 3, 0.05);
        assertEquals(19.8895, Math.toDegrees(step), 1e-4);
        assertEquals(6, HitCount.steps(Math.PI / 2, step) + 1);
    }

    /** Independent look: distance of a sampled union of circles from the arc. */
    @Test
    @Sweeps(of = Scallop.class, formulas = { "insideMm", "outsideMm" })
    void sampledBoundaryAgrees() {
        for (double arc : new double[] { 12, 30, 80 }) {
            double theta = Math.toRadians(6);
            assertEquals(sampled(arc, 8, theta, arc - 8, 1), Scallop.insideMm(arc, 8, theta), 1e-4);
            assertEquals(sampled(arc, 8, theta, arc + 8, -1), Scallop.outsideMm(arc, 8, theta), 1e-4);
        }
    }

    /** Walks along the ray between two hits until it leaves both circles, in steps of 1e-5. */
    private static double sampled(double arc, double r, double theta, double path, int outward) {
        double cx = path * Math.cos(theta / 2);
        double cy = path * Math.sin(theta / 2);
        double d = arc;
        while (Math.hypot(d - cx, cy) > r) {
            d -= outward * 1e-5;
        }
        return Math.abs(arc - d);
    }

    @Test
    void arcsTendToTheStraightEdge() {
        assertEquals(Scallop.straightMm(5, 2), Scallop.insideMm(1e6, 5, 2 / 1e6), 1e-4);
        assertEquals(Scallop.straightMm(5, 2), Scallop.outsideMm(1e6, 5, 2 / 1e6), 1e-4);
    }

    @Test
    @Sweeps(of = Scallop.class, formulas = { "insideStepRad", "outsideStepRad", "straightMm", "straightPitchMm" })
    void stepGivesBackItsHeight() {
        for (double arc = 6; arc < 200; arc *= 1.5) {
            for (double h = 0.02; h < 0.5; h += 0.05) {
                assertEquals(h, Scallop.insideMm(arc, 5, Scallop.insideStepRad(arc, 5, h)), 1e-9);
                assertEquals(h, Scallop.outsideMm(arc, 5, Scallop.outsideStepRad(arc, 5, h)), 1e-9);
                assertTrue(Scallop.insideStepRad(arc, 5, h) > Scallop.outsideStepRad(arc, 5, h));
                assertEquals(h, Scallop.straightMm(5, Scallop.straightPitchMm(5, h)), 1e-9);
            }
        }
    }
}
