// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Pose;

/** Validation: contours against closed formulas of plane geometry. */
class FootprintTest {

    private static Tool example(ToolShape shape) {
        return switch (shape) {
            case ROUND, SQUARE, HEXAGON, TRIANGLE -> Shop.tool("x", shape, 20, 20, 0);
            case CORNER_RADIUS -> Shop.tool("x", shape, 30, 30, 8);
            case RECTANGLE -> Shop.tool("x", shape, 30, 16, 2);
            default -> Shop.tool("x", shape, 30, 16, 0);
        };
    }

    @ParameterizedTest
    @EnumSource(names = { "ROUND", "SQUARE", "RECTANGLE", "OBROUND", "SINGLE_FLAT", "DOUBLE_FLAT", "HEXAGON", "TRIANGLE",
            "CORNER_RADIUS", "SLITTING" })
    void contourLengthIsTheCutLength(ToolShape shape) {
        Tool tool = example(shape);
        Contour c = ToolFootprint.of(tool).getFirst();
        assertEquals(ToolFootprint.cutLengthByFormulaMm(tool), c.lengthMm(), 1e-9);
        assertTrue(c.isCounterClockwise());
        for (int i = 0; i < c.segments().size(); i++) {
            Point next = c.segments().get((i + 1) % c.segments().size()).start();
            assertTrue(c.segments().get(i).end().distance(next) < 1e-9, shape + " is closed");
        }
    }

    @ParameterizedTest
    @EnumSource(names = { "SQUARE", "RECTANGLE", "OBROUND", "DOUBLE_FLAT", "HEXAGON", "TRIANGLE", "CORNER_RADIUS" })
    void symmetryOrderMapsTheContourOntoItself(ToolShape shape) {
        Tool tool = example(shape);
        int order = ToolFootprint.symmetryOrder(tool);
        Contour c = ToolFootprint.of(tool).getFirst();
        Contour turned = c.moved(Pose.at(0, 0, 360.0 / order));
        turned.segments().forEach(s -> assertTrue(c.distance(s.pointAt(0.3)) < 1e-9));
        Contour half = c.moved(Pose.at(0, 0, 180.0 / order));
        assertTrue(half.segments().stream().anyMatch(s -> c.distance(s.pointAt(0.0)) > 0.1));
    }

    /** Areas and diagonals worked by hand. */
    @Test
    void areasAndDiameters() {
        assertEquals(20 * Math.sqrt(2), ToolFootprint.circumscribedDiameterMm(example(ToolShape.SQUARE)), 1e-9);
        assertEquals(30, ToolFootprint.circumscribedDiameterMm(example(ToolShape.OBROUND)), 1e-9);
        assertEquals(20 * 2 / Math.sqrt(3), ToolFootprint.circumscribedDiameterMm(example(ToolShape.HEXAGON)), 1e-9);
        assertEquals(2 * Math.hypot(15, 7), ToolFootprint.circumscribedDiameterMm(example(ToolShape.CORNER_RADIUS)), 1e-9);
        assertEquals(900 - Math.PI * 64, ToolFootprint.areaMm2(example(ToolShape.CORNER_RADIUS)), 1e-9);
        assertEquals(Math.sqrt(3) / 2 * 400, ToolFootprint.areaMm2(example(ToolShape.HEXAGON)), 1e-9);
        assertEquals(Math.sqrt(3) / 4 * 400, ToolFootprint.areaMm2(example(ToolShape.TRIANGLE)), 1e-9);
        assertEquals(30 * 16 - (4 - Math.PI) * 4, ToolFootprint.areaMm2(example(ToolShape.RECTANGLE)), 1e-9);
    }

    /** The height over the flat is the height of the contour. */
    @Test
    void flatsLieAtTheirHeight() {
        assertEquals(16, ToolFootprint.of(example(ToolShape.SINGLE_FLAT)).getFirst().bounds().height(), 1e-9);
        assertEquals(30, ToolFootprint.of(example(ToolShape.SINGLE_FLAT)).getFirst().bounds().width(), 1e-9);
        assertEquals(16, ToolFootprint.of(example(ToolShape.DOUBLE_FLAT)).getFirst().bounds().height(), 1e-9);
    }
}
