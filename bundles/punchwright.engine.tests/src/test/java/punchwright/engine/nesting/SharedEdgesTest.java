// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Pose;
import punchwright.engine.geometry.Shape;

/** Validation: length of shared cuts of arrangements whose figures geometry gives. */
class SharedEdgesTest {

    private static final Contour PLATE = Contour.rectangle(0, 0, 100, 60);

    @Test
    void sideBySideAndAbove() {
        Contour right = PLATE.moved(Pose.at(105, 20, 0));
        Contour above = PLATE.moved(Pose.at(30, 65, 0));
        assertEquals(40, SharedEdges.lengthMm(List.of(PLATE, right), 5), 1e-9);
        assertEquals(70, SharedEdges.lengthMm(List.of(PLATE, above), 5), 1e-9);
        assertEquals(0, SharedEdges.lengthMm(List.of(PLATE, right), 6), 1e-9);
        assertEquals(0, SharedEdges.lengthMm(List.of(PLATE, PLATE.moved(Pose.at(105.1, 0, 0))), 5), 1e-9);
    }

    /** Two right triangles of 300, 400 and 500 share the long side less nothing when shifted square to it. */
    @Test
    void slantedEdges() {
        Contour t = Contour.polygon(List.of(new Point(0, 0), new Point(400, 0), new Point(0, 300)));
        Contour half = t.moved(Pose.at(400 + 0.6 * 5, 300 + 0.8 * 5, 180));
        assertEquals(500, SharedEdges.lengthMm(List.of(t, half), 5), 1e-6);
    }

    /** A grid of m by n plates has (m - 1) n short and m (n - 1) long inner cuts; machine time falls by their length. */
    @Test
    void countsInMachineTime() {
        NestingJob job = new NestingJob(List.of(Jobs.part("A", 100, 60, 12, 5, 0.0)),
                List.of(Jobs.sheet("S", 440, 220, 10, 1)), 10, 10, 3000, 2000, 100, Jobs.STEEL_1_5_KG_PER_MM2, 10_000, 1);
        Nesting apart = Nester.nest(job.with(new NestingCosts(0, 0, 300, 300, 0, 0.01)));
        Nesting shared = Nester.nest(job.with(new NestingCosts(0, 0, 300, 300, 0, 0.01).sharing(5)));
        assertEquals(12 * 320 * 0.01, apart.cost().machine(), 1e-9);
        assertEquals((12 * 320 - (3 * 3 * 60 + 4 * 2 * 100)) * 0.01, shared.cost().machine(), 1e-6);
        assertTrue(shared.cost().total() >= shared.boundCost() - 1e-9);
    }

    /** Trapezoids by true outlines meet exactly at the web, so that their slanted edges are cut once. */
    @Test
    void outlinesMeetAtTheWeb() {
        Shape trapezoid = new Shape(Contour.polygon(List.of(new Point(0, 0), new Point(200, 0), new Point(150, 80),
                new Point(50, 80))), List.of());
        NestingJob job = new NestingJob(List.of(new NestPart("T", trapezoid, 10, List.of(0.0, 180.0), 5)),
                List.of(Jobs.sheet("S", 1000, 200, 10, 5)), 10, 10, 3000, 2000, 100, Jobs.STEEL_1_5_KG_PER_MM2, 400_000, 1, true)
                .with(new NestingCosts(0, 0, 300, 300, 0, 0.01).sharing(5));
        Nesting n = Nester.nest(job);
        double own = 10 * trapezoid.outer().lengthMm() * 0.01;
        assertTrue(n.cost().machine() < own - 4 * 0.01 * Math.hypot(50, 80), n.cost().machine() + " of " + own);
    }
}
