// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;

/** Validation: the quick answers are those of the slow and plain way. */
class SearchTest {

    @Test
    void boxIndexFindsWhatComparingAllFinds() {
        Random random = new Random(3);
        for (int n : new int[] {0, 1, 7, 8, 9, 64, 65, 1000}) {
            List<Bounds> boxes = new ArrayList<>();
            for (int i = 0; i < n; i++) {
                boxes.add(box(random, 10));
            }
            BoxIndex index = new BoxIndex(boxes);
            for (int q = 0; q < 50; q++) {
                Bounds query = box(random, 30);
                Set<Integer> found = new TreeSet<>();
                index.query(query, found::add);
                Set<Integer> expected = new TreeSet<>();
                for (int i = 0; i < n; i++) {
                    if (boxes.get(i).intersects(query)) {
                        expected.add(i);
                    }
                }
                assertEquals(expected, found);
            }
        }
    }

    @Test
    void neighboursOfAllBoxesAreThoseOfOneQueryEach() {
        Random random = new Random(4);
        for (int n : new int[] {0, 1, 7, 8, 9, 64, 65, 512, 513, 1000}) {
            List<Bounds> boxes = new ArrayList<>();
            for (int i = 0; i < n; i++) {
                boxes.add(i % 50 == 49 ? Bounds.EMPTY : box(random, 10));
            }
            BoxIndex index = new BoxIndex(boxes);
            List<Integer> asked = new ArrayList<>();
            for (int group = 0; group < index.groups(); group++) {
                index.neighbours(group, () -> false, (i, others, count) -> {
                    asked.add(i);
                    List<Integer> expected = new ArrayList<>();
                    index.query(boxes.get(i), expected::add);
                    assertEquals(expected, Arrays.stream(others, 0, count).boxed().toList());
                });
            }
            assertEquals(IntStream.range(0, n).boxed().toList(), asked.stream().sorted().toList());
            if (n > 0) {
                index.neighbours(0, () -> true, (i, others, count) -> fail("stopped, and yet " + i));
            }
        }
    }

    @Test
    void boxClearOfAnOutlineLiesOnOneSideOfIt() {
        Contour c = Openings.keyhole(60, 12, 16);
        InsideTest test = new InsideTest(c, 1e-4);
        Random random = new Random(6);
        int clear = 0;
        for (int k = 0; k < 5000; k++) {
            double x = random.nextDouble() * 100 - 40;
            double y = random.nextDouble() * 60 - 30;
            Bounds box = new Bounds(x, y, x + random.nextDouble() * 3, y + random.nextDouble() * 3);
            if (test.isClearOf(box)) {
                clear++;
                for (int i = 0; i <= 4; i++) {
                    Point p = new Point(box.minX() + i * box.width() / 4, box.minY() + (4 - i) * box.height() / 4);
                    assertEquals(test.contains(box.center()), test.contains(p), () -> box.toString());
                }
                assertTrue(c.segments().stream().flatMap(s -> IntStream.rangeClosed(0, 200).mapToObj(i -> s.pointAt(i / 200.0)))
                        .noneMatch(box.grown(-0.001)::contains));
            }
        }
        assertTrue(clear > 1000, "only " + clear);
    }

    private static Bounds box(Random random, double size) {
        double x = random.nextDouble() * 100;
        double y = random.nextDouble() * 100;
        return new Bounds(x, y, x + random.nextDouble() * size, y + random.nextDouble() * size);
    }

    @Test
    void insideTestAgreesWithTheWindingOfTheExactContour() {
        Contour c = Openings.keyhole(60, 12, 16).moved(Pose.at(3, 4, 33));
        InsideTest test = new InsideTest(c, 1e-4);
        Random random = new Random(5);
        int inside = 0;
        for (int i = 0; i < 20000; i++) {
            Point p = new Point(random.nextDouble() * 100 - 40, random.nextDouble() * 100 - 40);
            Point own = p.minus(new Point(3, 4)).rotated(-Math.toRadians(33));
            boolean expected = own.norm() < 16 || own.x() > 0 && own.x() < 38 && Math.abs(own.y()) < 6
                    || own.distance(new Point(38, 0)) < 6;
            assertEquals(expected, test.contains(p), () -> p.toString());
            inside += expected ? 1 : 0;
        }
        assertTrue(inside > 1000);
    }

    @Test
    void interiorPointLiesInsideThinAndHollowForms() {
        for (Contour c : List.of(Openings.arcSlot(200, 2, 50), Openings.triangle(3), Openings.rectangle(100, 0.5, 0),
                Contour.circle(new Point(9, 9), 1))) {
            for (int deg = 0; deg < 360; deg += 15) {
                Contour turned = c.moved(Pose.at(1, 2, deg));
                assertTrue(new InsideTest(turned, 1e-3).contains(InteriorPoint.of(turned)));
            }
        }
    }

    @Test
    void intersectionsOfLinesAndArcs() {
        Line x = new Line(new Point(-5, 0), new Point(5, 0));
        assertEquals(List.of(new Point(1, 0)), Intersections.of(x, new Line(new Point(1, -1), new Point(1, 1)), 1e-9));
        assertEquals(2, Intersections.of(x, Arc.circle(Point.ORIGIN, 3), 1e-9).size());
        assertEquals(0, Intersections.of(x, Arc.circle(new Point(0, 4), 3), 1e-9).size());
        // Two circles of radius 5 with centres 6 apart meet at height 4 (3-4-5 triangle).
        List<Point> two = Intersections.of(Arc.circle(Point.ORIGIN, 5), Arc.circle(new Point(6, 0), 5), 1e-9);
        assertEquals(2, two.size());
        assertEquals(4, Math.abs(two.get(0).y()), 1e-12);
        assertEquals(3, two.get(0).x(), 1e-12);
        assertEquals(0, Intersections.of(x, new Line(new Point(7, -1), new Point(7, 1)), 1e-9).size());
    }
}
