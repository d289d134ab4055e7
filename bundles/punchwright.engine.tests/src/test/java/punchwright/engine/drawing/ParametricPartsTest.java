// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Shape;

/** Validation: areas by plane geometry; counts of holes by hand. */
class ParametricPartsTest {

    private static final double E = 1e-9;

    private static String refused(Executable part) {
        DrawingException e = assertThrows(DrawingException.class, part);
        assertTrue(e.getMessage().startsWith("P-1"));
        assertTrue(!e.finding().remedy().isEmpty());
        return e.finding().message();
    }

    @Test
    void plate() throws DrawingException {
        Shape s = ParametricParts.plate("P-1", 200, 100, 10, List.of(Hole.round(50, 50, 20), Hole.obround(120, 50, 30, 40, 10)));
        assertEquals(20000 - (4 - Math.PI) * 100 - 100 * Math.PI - (300 + 25 * Math.PI), s.areaMm2(), E);
        assertEquals(0, s.bounds().minX(), E);
        assertEquals(100, s.bounds().maxY(), E);
    }

    @Test
    void flange() throws DrawingException {
        Shape s = ParametricParts.flange("P-1", 165, 61, 125, 4, 18, 45);
        assertEquals(5, s.holes().size());
        assertEquals(Math.PI / 4 * (165 * 165 - 61 * 61 - 4 * 18 * 18), s.areaMm2(), 1e-6);
        Point bolt = s.holes().get(1).bounds().center();
        assertEquals(62.5 * Math.sqrt(0.5), bolt.x(), E);
        assertEquals(62.5 * Math.sqrt(0.5), bolt.y(), E);
    }

    @Test
    void perforatedPanelInSquarePitch() throws DrawingException {
        // Room 180 x 80 between the margins: (180 - 5) / 8 = 21.9 -> 22 columns, (80 - 5) / 8 = 9.4 -> 10 rows.
        Shape s = ParametricParts.perforatedPanel("P-1", 200, 100, Hole.round(0, 0, 5), 8, HoleArrangement.SQUARE, 10, 10);
        assertEquals(220, s.holes().size());
        assertEquals(20000 - 220 * 6.25 * Math.PI, s.areaMm2(), 1e-6);
    }

    @Test
    void perforatedPanelStaggeredBy60Degrees() throws DrawingException {
        Shape s = ParametricParts.perforatedPanel("P-1", 200, 100, Hole.round(0, 0, 5), 8, HoleArrangement.STAGGERED_60, 10, 10);
        // Half a pitch of room is kept for the shifted rows: (180 - 5 - 4) / 8 = 21.4 -> 22; rows 6.928 apart: 75 / 6.928 -> 11.
        assertEquals(22 * 11, s.holes().size());
        Point first = s.holes().get(0).bounds().center();
        double nearest = s.holes().stream().skip(1).mapToDouble(h -> h.bounds().center().distance(first)).min().orElseThrow();
        assertEquals(8, nearest, E);
        assertTrue(s.holes().stream().allMatch(h -> h.bounds().minX() >= 10 - E && h.bounds().maxX() <= 190 + E));
    }

    @Test
    void notchedBracket() throws DrawingException {
        assertEquals(20000 - 4 * 15 * 20, ParametricParts.notchedBracket("P-1", 200, 100, 15, 20, 4, List.of()).areaMm2(), E);
        Shape two = ParametricParts.notchedBracket("P-1", 200, 100, 15, 20, 2, List.of());
        assertEquals(20000 - 2 * 15 * 20, two.areaMm2(), E);
        assertEquals(8, two.outer().segments().size());
        assertTrue(!two.outer().contains(new Point(7, 7)) && !two.outer().contains(new Point(195, 10)));
        assertTrue(two.outer().contains(new Point(195, 95)));
    }

    @Test
    void rackPanelOfThreeUnits() throws DrawingException {
        Shape s = ParametricParts.rackPanel("P-1", 3, List.of());
        assertEquals(482.6, s.bounds().width(), E);
        assertEquals(132.55, s.bounds().height(), E); // IEC 60297-3-100, front panel of 3 U [from memory]
        assertEquals(4, s.holes().size());
    }

    @Test
    void busbar() throws DrawingException {
        Shape s = ParametricParts.busbar("P-1", 500, 60, List.of(Hole.obround(40, 30, 0, 24, 14)));
        assertEquals(30000 - (10 * 14 + 49 * Math.PI), s.areaMm2(), E);
    }

    @Test
    void sizesOutOfRangeAreNamed() {
        assertTrue(refused(() -> ParametricParts.plate("P-1", -5, 100, 0, List.of())).contains("length is -5 mm"));
        assertTrue(refused(() -> ParametricParts.plate("P-1", 200, 100, 51, List.of())).contains("corner radius"));
        assertTrue(refused(() -> ParametricParts.plate("P-1", Double.NaN, 100, 0, List.of())).contains("length"));
        assertTrue(refused(() -> ParametricParts.flange("P-1", 100, 120, 80, 4, 9, 0)).contains("bore"));
        assertTrue(refused(() -> ParametricParts.notchedBracket("P-1", 100, 50, 60, 5, 4, List.of())).contains("notch along x"));
    }

    @Test
    void holesThatDoNotFitAreNamed() {
        assertTrue(refused(() -> ParametricParts.plate("P-1", 200, 100, 0, List.of(Hole.round(3, 50, 10))))
                .contains("over the outline"));
        assertTrue(refused(() -> ParametricParts.plate("P-1", 200, 100, 0,
                List.of(Hole.round(50, 50, 10), Hole.round(58, 50, 10))))
                .contains("over each other"));
        assertTrue(refused(() -> ParametricParts.plate("P-1", 200, 100, 0, List.of(Hole.obround(50, 50, 0, 10, 12))))
                .contains("do not fit together"));
        assertTrue(refused(() -> ParametricParts.perforatedPanel("P-1", 200, 100, Hole.round(0, 0, 8), 8,
                HoleArrangement.SQUARE, 10, 10))
                .contains("leaves no metal"));
    }
}
