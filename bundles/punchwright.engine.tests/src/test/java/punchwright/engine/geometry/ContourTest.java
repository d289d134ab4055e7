// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

/** Validation: areas and lengths of named forms against the formulas of plane geometry (Bronstein, "Handbook of Mathematics"). */
class ContourTest {

    private static final double E = 1e-9;

    @Test
    void circle() {
        Contour c = Contour.circle(new Point(3, 4), 10);
        assertEquals(25 * Math.PI, c.signedAreaMm2(), E);
        assertEquals(10 * Math.PI, c.lengthMm(), E);
        assertEquals(10, c.circleDiameterMm(1e-6), E);
    }

    @Test
    void obroundIsARectangleAndACircle() {
        Contour c = Openings.rectangle(40, 6, 3);
        assertEquals(34 * 6 + 9 * Math.PI, c.areaMm2(), E);
        assertEquals(2 * 34 + 6 * Math.PI, c.lengthMm(), E);
        assertEquals(4, c.segments().size());
    }

    @Test
    void roundedRectangleLosesFourCorners() {
        Contour c = Openings.rectangle(50, 30, 5);
        assertEquals(1500 - (4 - Math.PI) * 25, c.areaMm2(), E);
        assertEquals(2 * (40 + 20) + 10 * Math.PI, c.lengthMm(), E);
    }

    @Test
    void regularPolygons() {
        assertEquals(Math.sqrt(3) / 2 * 13 * 13, Openings.hexagon(13).areaMm2(), E);
        assertEquals(2 * Math.sqrt(3) * 13, Openings.hexagon(13).lengthMm(), E);
        assertEquals(Math.sqrt(3) / 4 * 100, Openings.triangle(10).areaMm2(), E);
    }

    @Test
    void flatsTakeSegmentsOffACircle() {
        double r = 8;
        double half = Math.acos(6 / r);
        double segment = r * r / 2 * (2 * half - Math.sin(2 * half));
        assertEquals(Math.PI * r * r - segment, Openings.singleFlat(16, 14).areaMm2(), E);
        assertEquals(Math.PI * r * r - 2 * segment, Openings.doubleFlat(16, 12).areaMm2(), E);
    }

    @Test
    void arcSlotIsAPieceOfARingWithRoundEnds() {
        double sweep = 1.2;
        Contour c = Openings.arcSlot(50 * sweep + 8, 8, 50);
        assertEquals(50 * sweep * 8 + 16 * Math.PI, c.areaMm2(), E);
        assertTrue(c.contains(Point.ORIGIN));
    }

    @Test
    void keyholeIsARoundAndASlot() {
        Contour c = Openings.keyhole(20, 4, 5);
        double half = Math.asin(2 / 5.0);
        double segment = 12.5 * (2 * half - Math.sin(2 * half));
        double slot = (15 - 2 - 5 * Math.cos(half)) * 4 + 2 * Math.PI;
        assertEquals(25 * Math.PI - segment + slot, c.areaMm2(), E);
        assertEquals(20, c.bounds().width(), E);
    }

    @Test
    void impossibleSizesMakeNothing() {
        assertNull(Openings.keyhole(20, 12, 5));
        assertNull(Openings.rectangle(10, 5, 3));
        assertNull(Openings.singleFlat(10, 10));
        assertNull(Openings.arcSlot(5, 8, 50));
    }

    @Test
    void farFromTheOriginTheAreaStaysExact() {
        Contour far = Contour.rectangle(5e8, 4.5e9, 200, 100);
        assertEquals(20000, far.areaMm2(), 1e-4);
    }

    @Test
    void orientationAndReversal() {
        Contour c = Openings.rectangle(50, 30, 5);
        assertTrue(c.isCounterClockwise());
        assertFalse(c.oriented(false).isCounterClockwise());
        assertEquals(-c.signedAreaMm2(), c.reversed().signedAreaMm2(), E);
        assertEquals(c.lengthMm(), c.reversed().lengthMm(), E);
    }

    @Test
    void shapeTurnsOuterAndHoles() {
        Shape s = new Shape(Contour.rectangle(0, 0, 100, 50).reversed(), List.of(Contour.circle(new Point(20, 20), 10)));
        assertTrue(s.outer().isCounterClockwise());
        assertFalse(s.holes().get(0).isCounterClockwise());
        assertEquals(5000 - 25 * Math.PI, s.areaMm2(), E);
        assertEquals(300 + 10 * Math.PI, s.cutLengthMm(), E);
    }

    @Test
    void areaDoesNotChangeWithPose() {
        Contour c = Openings.keyhole(20, 4, 5);
        for (int deg = 0; deg < 360; deg += 7) {
            assertEquals(c.areaMm2(), c.moved(new Pose(31, -12, deg, deg % 2 == 0)).areaMm2(), 1e-9);
        }
    }
}
