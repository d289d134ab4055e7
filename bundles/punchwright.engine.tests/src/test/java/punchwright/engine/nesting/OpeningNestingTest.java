// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

import org.junit.jupiter.api.Test;

import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Pose;
import punchwright.engine.geometry.Shape;
import punchwright.engine.nesting.check.LayoutCheck;
import punchwright.engine.nesting.check.LayoutReason;

/** Validation: small parts from the waste of openings, counted by geometry and judged by the independent check. */
class OpeningNestingTest {

    private static final Shape FRAME = new Shape(Contour.rectangle(0, 0, 600, 500),
            List.of(Contour.rectangle(50, 50, 500, 400)));

    private static NestingJob job(List<NestPart> parts, double lengthMm, double widthMm) {
        return new NestingJob(parts, List.of(Jobs.sheet("S", lengthMm, widthMm, 10, 100)), 10, 10, 10_000, 3_000, 1_000,
                Jobs.STEEL_1_5_KG_PER_MM2, 600_000, 1, true);
    }

    private static List<NestPart> parts(int frames, int plates, List<UsableOpening> openings) {
        return List.of(new NestPart("F", FRAME, frames, List.of(0.0), 5).with(openings),
                new NestPart("P", Jobs.rectangle(110, 85), plates, List.of(0.0), 5));
    }

    private static int sheets(NestingJob job) {
        Nesting nesting = Nester.nest(job);
        assertEquals(List.of(), LayoutCheck.of(job, nesting));
        return nesting.layouts().stream().mapToInt(Layout::runs).sum();
    }

    /** The opening less 10 mm all round holds 480 x 380: 4 x 4 plates of 110 x 85 with webs of 5 (455 x 355); geometry. */
    @Test
    void platesFromTheWaste() {
        assertEquals(2, sheets(job(parts(2, 32, List.of(new UsableOpening(0, 10))), 620, 520)));
        assertTrue(sheets(job(parts(2, 32, List.of()), 620, 520)) > 2);
        assertTrue(sheets(job(parts(2, 32, List.of(new UsableOpening(0, 24))), 620, 520)) > 2);
    }

    @Test
    void theCheckSeesPartsInOpenings() {
        List<Placement> placed = List.of(new Placement("F", Pose.at(10, 10, 0)), new Placement("P", Pose.at(70, 70, 0)));
        NestingJob free = job(parts(1, 1, List.of(new UsableOpening(0, 10))), 620, 520);
        Layout layout = new Layout(free.offers().get(0), placed, 1);
        assertEquals(List.of(), LayoutCheck.of(free, layout));
        for (List<UsableOpening> openings : List.of(List.<UsableOpening>of(), List.of(new UsableOpening(0, 10.1)))) {
            NestingJob job = job(parts(1, 1, openings), 620, 520);
            assertEquals(LayoutReason.OPENING, LayoutCheck.of(job, layout).get(0).reason());
        }
        NestingJob wrong = job(parts(1, 1, List.of(new UsableOpening(1, 10))), 620, 520);
        assertThrows(IllegalArgumentException.class, () -> Nester.nest(wrong));
    }

    /** Rings and frames with discs, triangles and strips, any sizes and clearances: always valid, some of them cheaper. */
    @Test
    void randomOrdersWithOpenings() {
        int cheaper = 0;
        for (int seed = 1; seed <= 6; seed++) {
            SplittableRandom r = new SplittableRandom(seed);
            double size = r.nextDouble(200, 320);
            double clear = r.nextDouble(0, 15);
            Shape ring = r.nextBoolean() ? new Shape(Contour.circle(new Point(3, 4), size),
                    List.of(Contour.circle(new Point(3, 4), 0.8 * size)))
                    : new Shape(Contour.rectangle(-50, 7, 2 * size, 2 * size),
                            List.of(Contour.rectangle(-50 + 0.2 * size, 7 + 0.2 * size, 1.6 * size, 1.5 * size)));
            List<NestPart> small = new ArrayList<>();
            small.add(new NestPart("D", new Shape(Contour.circle(new Point(0, 0), r.nextDouble(20, 45)), List.of()),
                    r.nextInt(40, 90), List.of(0.0), 4));
            small.add(new NestPart("T", new Shape(Contour.polygon(List.of(new Point(0, 0), new Point(r.nextDouble(40, 120), 0),
                    new Point(10, 60))), List.of()), r.nextInt(40, 90), List.of(0.0, 30.0, 180.0, 210.0), 4));
            int rings = r.nextInt(3, 9);
            List<NestPart> with = new ArrayList<>(small);
            with.add(new NestPart("R", ring, rings, List.of(0.0), 4).with(List.of(new UsableOpening(0, clear))));
            List<NestPart> without = new ArrayList<>(small);
            without.add(new NestPart("R", ring, rings, List.of(0.0), 4));
            int a = sheets(job(with, 2 * size + 60, 2 * size + 60));
            int b = sheets(job(without, 2 * size + 60, 2 * size + 60));
            assertTrue(a <= b, "seed " + seed);
            cheaper += a < b ? 1 : 0;
        }
        assertTrue(cheaper >= 2, "only " + cheaper + " of 6 gained");
    }
}
