// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting.shapes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import punchwright.engine.nesting.boxes.Work;

class StripBoundTest {

    private static final double WIDTH = 10;

    private static Piece polygon(List<Double> angles, double... xy) {
        double[][] ring = new double[xy.length / 2][];
        for (int i = 0; i < ring.length; i++) {
            ring[i] = new double[] {xy[2 * i], xy[2 * i + 1]};
        }
        return new Piece(List.<double[][]>of(ring), angles, 1e-6 * WIDTH);
    }

    private static Piece box(double length, double width, List<Double> angles) {
        return polygon(angles, 0, 0, length, 0, length, width, 0, width);
    }

    /** Validation, by hand: squares of 6 cannot lie side by side in a width of 10, so three need 18; by area 10.8. */
    @Test
    void squaresTooWideToLieSideBySideNeedTheSumOfTheirLengths() {
        Piece square = box(6, 6, List.of(0.0, 90.0));
        assertEquals(18, StripBound.of(Collections.nCopies(3, square), WIDTH), 1e-4);
    }

    /** Validation, by hand: of boxes 4 wide two lie side by side, never three, so five of length 3 need 7.5 (by area 6). */
    @Test
    void boxesWiderThanAThirdShareTheWidthByTwo() {
        assertEquals(7.5, StripBound.of(Collections.nCopies(5, box(3, 4, List.of(0.0))), WIDTH), 1e-4);
    }

    /** Validation, by hand: a right triangle of 10 x 10 is wider than half the strip over half its length, so two need 10. */
    @Test
    void twoTrianglesThatFillASquareNeedTheSquare() {
        Piece triangle = polygon(List.of(0.0, 180.0), 0, 0, 10, 0, 0, 10);
        assertEquals(10, StripBound.of(List.of(triangle, triangle), WIDTH), 1e-3);
    }

    /** The bound never passes a length that was reached, and a search of the same work and seed gives the same strip. */
    @Test
    void boundStaysBelowEveryStripFound() {
        SplittableRandom random = new SplittableRandom(7);
        for (int n = 0; n < 6; n++) {
            List<Piece> pieces = new ArrayList<>();
            for (int k = 0; k < 5; k++) {
                List<Double> angles = random.nextBoolean() ? List.of(0.0) : List.of(0.0, 90.0);
                double l = 1 + 8 * random.nextDouble();
                double w = 1 + 8 * random.nextDouble();
                pieces.add(random.nextBoolean() ? box(l, w, angles) : polygon(angles, 0, 0, l, 0, l * random.nextDouble(), w));
            }
            double bound = StripBound.of(pieces, WIDTH);
            StripSearch.Strip strip = StripSearch.pack(pieces, WIDTH, new Work(40_000), n);
            assertTrue(bound <= strip.length() * (1 + 1e-5), "bound " + bound + ", found " + strip.length());
            assertEquals(strip, StripSearch.pack(pieces, WIDTH, new Work(40_000), n));
        }
    }
}
