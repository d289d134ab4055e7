// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Openings;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Pose;
import punchwright.engine.geometry.Segment;
import punchwright.engine.geometry.Shape;

/** Validation: copies of random parts, turned and mirrored at random and mixed, are counted as they were made. */
class PartCountingPropertyTest {

    private static final int KINDS = 12;
    private static final int COPIES = 8;

    /** A plate with one cut corner, so that it is not its own mirror, and round and square holes at random. */
    private static Shape part(Random random, int kind) {
        double l = 40 + 10 * (kind / 3) + 5 * random.nextDouble();
        double w = 30 + 3 * random.nextDouble();
        Contour outline = Contour.polygon(List.of(new Point(0, 0), new Point(l, 0), new Point(l, w), new Point(9, w),
                new Point(0, w - 4)));
        List<Contour> holes = new ArrayList<>();
        for (int i = 0; i < 1 + random.nextInt(3); i++) {
            Point at = new Point(12 + 10 * i, 8 + 10 * random.nextDouble());
            double size = 2 + 3 * random.nextDouble();
            holes.add(random.nextBoolean() ? Contour.circle(at, size)
                    : Openings.rectangle(size, size, 0).moved(Pose.at(at.x(), at.y(), 90 * random.nextDouble())));
        }
        return new Shape(outline, holes);
    }

    private record Copy(int kind, boolean mirrored, Shape shape) {
    }

    private static List<Copy> mixed(Random random) {
        List<Copy> copies = new ArrayList<>();
        for (int kind = 0; kind < KINDS; kind++) {
            Shape part = part(random, kind);
            for (int i = 0; i < COPIES; i++) {
                boolean mirrored = random.nextBoolean();
                copies.add(new Copy(kind, mirrored, part.moved(new Pose(2000 * random.nextDouble(), 2000 * random.nextDouble(),
                        360 * random.nextDouble(), mirrored))));
            }
        }
        Collections.shuffle(copies, random);
        return copies;
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void everyCopyIsFoundOnceWithItsFace(long seed) {
        List<Copy> copies = mixed(new Random(seed));
        List<PartGroup> groups = PartCounting.groups(copies.stream().map(Copy::shape).toList());
        assertEquals(KINDS, groups.size());
        for (PartGroup group : groups) {
            assertEquals(COPIES, group.count());
            Copy first = copies.get(group.copies().get(0).position());
            for (PartGroup.Copy c : group.copies()) {
                Copy made = copies.get(c.position());
                assertEquals(first.kind(), made.kind());
                assertEquals(first.mirrored() != made.mirrored(), c.pose().mirrored());
                assertLiesOn(group.shape().moved(c.pose()), made.shape());
            }
        }
    }

    private static void assertLiesOn(Shape moved, Shape drawn) {
        for (Segment s : moved.outer().segments()) {
            assertTrue(drawn.outer().distance(s.start()) < 1e-6);
        }
        for (Contour hole : moved.holes()) {
            assertTrue(drawn.holes().stream().anyMatch(h -> h.distance(hole.segments().get(0).start()) < 1e-6));
        }
    }
}
