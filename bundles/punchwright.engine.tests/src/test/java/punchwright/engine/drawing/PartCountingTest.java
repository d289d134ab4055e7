// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;

import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Pose;
import punchwright.engine.geometry.Segment;
import punchwright.engine.geometry.Shape;

class PartCountingTest {

    private static final Shape L =
            new Shape(Contour.polygon(List.of(new Point(0, 0), new Point(60, 0), new Point(60, 20), new Point(20, 20),
            new Point(20, 90), new Point(0, 90))),
            List.of(Contour.circle(new Point(10, 80), 8), Contour.rectangle(40, 5, 10, 10)));

    @Test
    void turnedAndMirroredCopiesAreOnePart() {
        Random random = new Random(2);
        List<Shape> shapes = new ArrayList<>(List.of(L));
        for (int i = 0; i < 40; i++) {
            shapes.add(L.moved(new Pose(random.nextDouble() * 1000, random.nextDouble() * 1000, random.nextDouble() * 360,
                    i % 4 == 0)));
        }
        List<PartGroup> groups = PartCounting.groups(shapes);
        assertEquals(1, groups.size());
        assertEquals(41, groups.get(0).count());
        assertEquals(10, groups.get(0).mirrored());
        for (PartGroup.Copy copy : groups.get(0).copies()) {
            Shape moved = L.moved(copy.pose());
            Shape drawn = shapes.get(copy.position());
            for (Segment s : moved.outer().segments()) {
                assertTrue(drawn.outer().distance(s.pointAt(0.3)) < 1e-6);
            }
            assertTrue(drawn.holes().get(1).distance(moved.holes().get(1).segments().get(0).start()) < 1e-6);
        }
    }

    @Test
    void aPartThatIsItsOwnMirrorIsNotCalledMirrored() {
        Shape plate = new Shape(Contour.rectangle(0, 0, 50, 30), List.of(Contour.circle(new Point(25, 15), 8)));
        PartGroup g = PartCounting.groups(List.of(plate, plate.moved(new Pose(100, 0, 90, true)))).get(0);
        assertEquals(2, g.count());
        assertEquals(0, g.mirrored());
    }

    @Test
    void differentHolesMakeDifferentParts() {
        Shape other = new Shape(L.outer(), List.of(Contour.circle(new Point(10, 80), 8.2), L.holes().get(1)));
        Shape moved = new Shape(L.outer(), List.of(Contour.circle(new Point(10, 79), 8), L.holes().get(1)));
        assertEquals(3, PartCounting.groups(List.of(L, other, moved)).size());
    }

    /** A notch that takes less area and edge than large outlines may differ by. */
    @Test
    void aSmallNotchMakesAnotherPart() {
        Shape plain = new Shape(Contour.rectangle(0, 0, 2000, 1000), List.of());
        Shape notched = new Shape(Contour.polygon(List.of(new Point(0, 0), new Point(700, 0), new Point(700, 2),
                new Point(702, 2), new Point(702, 0), new Point(2000, 0), new Point(2000, 1000), new Point(0, 1000))), List.of());
        assertEquals(2, PartCounting.groups(List.of(plain, notched)).size());
        assertEquals(2, PartCounting.groups(List.of(notched, plain)).size());
    }

    @Test
    void discsAndDiscsWithHoles() {
        Shape disc = new Shape(Contour.circle(new Point(0, 0), 40), List.of());
        Shape holed = new Shape(Contour.circle(new Point(0, 0), 40), List.of(Contour.circle(new Point(10, 0), 5)));
        List<PartGroup> groups =
                PartCounting.groups(List.of(disc, holed, disc.moved(Pose.at(99, 0, 0)), holed.moved(Pose.at(0, 99, 77))));
        assertEquals(List.of(2, 2), groups.stream().map(PartGroup::count).toList());
    }
}
