// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Shape;
import punchwright.engine.nesting.check.LayoutCheck;

/** Validation: true shapes against tilings and packings that geometry gives, and the independent check. */
class ShapeNestingTest {

    private static final int ORDERS = Integer.getInteger("punchwright.shapeOrders", 25);

    private static NestingJob job(Shape shape, int quantity, double webMm, double lengthMm, double widthMm, Double... angles) {
        return new NestingJob(List.of(new NestPart("A", shape, quantity, List.of(angles), webMm)),
                List.of(Jobs.sheet("S", lengthMm, widthMm, 10, 100)), 0, 0, 10_000, 3_000, 1_000, Jobs.STEEL_1_5_KG_PER_MM2,
                4_000_000, 1, true);
    }

    private static int onFirstSheet(NestingJob job) {
        Nesting nesting = Nester.nest(job);
        assertEquals(List.of(), LayoutCheck.of(job, nesting));
        return nesting.layouts().get(0).placements().size();
    }

    /** A right triangle and its half turn make a rectangle: 10 x 10 rectangles of 100 x 60 are 200 triangles; geometry. */
    @Test
    void rightTrianglesInPairs() {
        Shape triangle = new Shape(Contour.polygon(List.of(new Point(0, 0), new Point(100, 0), new Point(0, 60))), List.of());
        assertEquals(200, onFirstSheet(job(triangle, 400, 0, 1000.1, 600.1, 0.0, 180.0)));
    }

    /** Two L-trominoes tile 2 x 3 squares (Golomb, Polyominoes): 12 of them fill 6 x 6. */
    @Test
    void trominoesTile() {
        Shape l = new Shape(Contour.polygon(List.of(new Point(0, 0), new Point(200, 0), new Point(200, 100), new Point(100, 100),
                new Point(100, 200), new Point(0, 200))), List.of());
        assertEquals(12, onFirstSheet(job(l, 24, 0, 600.1, 600.1, 0.0, 180.0)));
    }

    /**
     * Discs of 95 with web 5 in 1000 x 1000: rows of 10 and 9 at 86.6 (equilateral triangles) make 6 x 10 + 5 x 9 = 105;
     * a square grid holds 100. Geometry.
     */
    @Test
    void discsStaggered() {
        Shape disc = new Shape(Contour.circle(new Point(0, 0), 94.8), List.of());
        assertTrue(onFirstSheet(job(disc, 315, 5, 1000, 1000, 0.0)) >= 105);
    }

    @Test
    @DisplayName("random orders by true shape are valid and never dearer than by boxes")
    void randomOrders() {
        int cheaper = 0;
        for (int seed = 1; seed <= ORDERS; seed++) {
            NestingJob b = Jobs.random(seed);
            NestingJob t = b.with(new SearchLimits(400_000, b.search().seed(), true));
            Nesting shapes = Nester.nest(t);
            assertEquals(List.of(), LayoutCheck.of(t, shapes), "seed " + seed);
            Nesting boxes = Nester.nest(b);
            int made = pieces(shapes) - pieces(boxes);
            assertTrue(made >= 0, "seed " + seed + " fewer pieces by shape");
            cheaper += made > 0 || price(shapes) < price(boxes) - 1e-9 ? 1 : 0;
        }
        assertTrue(cheaper >= ORDERS / 4, "only " + cheaper + " of " + ORDERS + " orders gained");
    }

    private static int pieces(Nesting n) {
        return n.layouts().stream().mapToInt(l -> l.runs() * l.placements().size()).sum();
    }

    private static double price(Nesting n) {
        return n.layouts().stream().mapToDouble(l -> l.runs() * l.sheet().price()).sum();
    }
}
