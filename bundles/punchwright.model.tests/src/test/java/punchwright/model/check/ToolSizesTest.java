// SPDX-License-Identifier: EPL-2.0
package punchwright.model.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

import punchwright.model.Samples;
import punchwright.model.shop.ClusterPosition;
import punchwright.model.shop.Tool;
import punchwright.model.shop.ToolFamily;
import punchwright.model.shop.ToolShape;

/** Validation: circumscribed circles by elementary geometry (Euclid; worked by hand with right triangles 3-4-5 and 5-12-13). */
class ToolSizesTest {

    private static double of(ToolShape shape, double length, double width, double radius) {
        Tool tool = Samples.tool("t", shape, length, width);
        tool.setCornerRadiusMm(radius);
        return ToolSizes.circumscribedMm(tool);
    }

    @Test
    void circumscribedDiameters() {
        assertEquals(10, of(ToolShape.ROUND, 10, 0, 0), 1e-12);
        assertEquals(5, of(ToolShape.RECTANGLE, 4, 3, 0), 1e-12);
        assertEquals(13, of(ToolShape.SLITTING, 12, 5, 0), 1e-12);
        assertEquals(5 + 4, of(ToolShape.RECTANGLE, 4 + 4, 3 + 4, 2), 1e-12);
        assertEquals(8 * Math.sqrt(2), of(ToolShape.SQUARE, 8, 0, 0), 1e-12);
        assertEquals(20, of(ToolShape.OBROUND, 20, 6, 0), 1e-12);
        assertEquals(11.547005383792516, of(ToolShape.HEXAGON, 10, 0, 0), 1e-12);
        assertEquals(11.547005383792516, of(ToolShape.TRIANGLE, 10, 0, 0), 1e-12);
    }

    @Test
    void aClusterReachesToItsFarthestPunchAndABodyMayBeLarger() {
        Tool tool = Samples.tool("t", ToolShape.CLUSTER, 6, 0);
        ClusterPosition position = Samples.SHOP.createClusterPosition();
        position.setXMm(30);
        position.setYMm(-40);
        tool.getPositions().add(position);
        assertEquals(106, ToolSizes.circumscribedMm(tool), 1e-12);
        tool.setBodyDiameterMm(120);
        assertEquals(120, ToolSizes.circumscribedMm(tool), 1e-12);
    }

    @Test
    void everyShapeHasAFamily() {
        assertEquals(ToolFamily.SLITTING, ToolSizes.familyOf(ToolShape.SLITTING));
        assertEquals(ToolFamily.MARKING, ToolSizes.familyOf(ToolShape.MARKING));
        assertEquals(ToolFamily.FORMING, ToolSizes.familyOf(ToolShape.LOUVRE));
        assertEquals(ToolFamily.PUNCHING, ToolSizes.familyOf(ToolShape.CLUSTER));
    }
}
