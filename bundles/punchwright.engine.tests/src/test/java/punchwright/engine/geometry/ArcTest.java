// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;

import org.junit.jupiter.api.Test;

/** Validation: arcs against closed formulas of the circle. */
class ArcTest {

    private static final double E = 1e-9;

    @Test
    void bulgeOneIsAHalfCircleToTheRightOfTheChord() {
        // DXF Reference, LWPOLYLINE: bulge = tan(included angle / 4), 1 is a semicircle, positive counter-clockwise.
        Arc arc = Arc.ofBulge(new Point(0, 0), new Point(10, 0), 1);
        assertEquals(5, arc.radiusMm(), E);
        assertEquals(Math.PI, arc.sweepRad(), E);
        assertEquals(-5, arc.pointAt(0.5).y(), E);
    }

    @Test
    void bulgeOfAQuarterCircle() {
        Arc arc = Arc.ofBulge(new Point(1, 0), new Point(0, 1), Math.tan(Math.PI / 8));
        assertEquals(0, arc.center().norm(), E);
        assertEquals(1, arc.radiusMm(), E);
        assertEquals(Math.PI / 2, arc.sweepRad(), E);
    }

    @Test
    void negativeBulgeRunsClockwise() {
        Arc arc = Arc.ofBulge(new Point(0, 0), new Point(10, 0), -0.5);
        assertTrue(arc.sweepRad() < 0);
        assertEquals(2.5, arc.pointAt(0.5).y(), E); // height of the arc = bulge x half chord
    }

    @Test
    void areaOfACircularSegment() {
        // Area of a segment = r^2 / 2 (a - sin a); here closed by its chord.
        Arc arc = new Arc(new Point(3, -2), 4, 0.3, 1.9);
        Contour segment = new Contour(java.util.List.of(arc, new Line(arc.end(), arc.start())));
        assertEquals(8 * (1.9 - Math.sin(1.9)), segment.areaMm2(), E);
    }

    @Test
    void boundsHoldAllPointsAndTouchThem() {
        Random random = new Random(7);
        for (int i = 0; i < 500; i++) {
            Arc arc = new Arc(new Point(random.nextDouble() * 10, random.nextDouble() * 10), 0.1 + random.nextDouble() * 5,
                    random.nextDouble() * 9 - 4, (random.nextDouble() * 2 - 1) * 2 * Math.PI);
            Bounds b = arc.bounds();
            Bounds sampled = Bounds.EMPTY;
            for (int k = 0; k <= 2000; k++) {
                sampled = sampled.including(arc.pointAt(k / 2000.0));
            }
            assertTrue(b.grown(1e-9).contains(sampled));
            assertEquals(b.width(), sampled.width(), 1e-4);
            assertEquals(b.height(), sampled.height(), 1e-4);
        }
    }

    @Test
    void distanceIsTheLeastOverManyPoints() {
        Random random = new Random(11);
        for (int i = 0; i < 300; i++) {
            Arc arc = new Arc(Point.ORIGIN, 2, random.nextDouble() * 6, (random.nextDouble() * 2 - 1) * 6);
            Point p = new Point(random.nextDouble() * 8 - 4, random.nextDouble() * 8 - 4);
            double least = Double.POSITIVE_INFINITY;
            for (int k = 0; k <= 5000; k++) {
                least = Math.min(least, arc.pointAt(k / 5000.0).distance(p));
            }
            assertEquals(least, arc.distance(p), 1e-3);
        }
    }

    @Test
    void movingKeepsShapeAndMirroringTurnsDirection() {
        Arc arc = new Arc(new Point(1, 2), 3, 0.4, 1.1);
        Pose pose = new Pose(5, -7, 30, true);
        Arc moved = arc.moved(pose);
        assertEquals(0, moved.start().distance(pose.apply(arc.start())), E);
        assertEquals(0, moved.end().distance(pose.apply(arc.end())), E);
        assertEquals(0, moved.pointAt(0.5).distance(pose.apply(arc.pointAt(0.5))), E);
        assertEquals(-1.1, moved.sweepRad(), E);
    }
}
