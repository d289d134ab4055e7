// SPDX-License-Identifier: EPL-2.0
package punchwright.model.check;

import java.util.EnumSet;
import java.util.Set;

import punchwright.model.shop.ClusterPosition;
import punchwright.model.shop.Tool;
import punchwright.model.shop.ToolFamily;
import punchwright.model.shop.ToolShape;

/** What follows from a tool's shape and dimensions by elementary geometry. */
public final class ToolSizes {

    private static final Set<ToolShape> TWO_DIMENSIONS = EnumSet.of(ToolShape.RECTANGLE, ToolShape.OBROUND, ToolShape.SINGLE_FLAT,
            ToolShape.DOUBLE_FLAT, ToolShape.SLITTING, ToolShape.LOUVRE, ToolShape.LANCE);
    private static final Set<ToolShape> FORMING = EnumSet.of(ToolShape.COLLAR, ToolShape.COUNTERSINK, ToolShape.LOUVRE,
            ToolShape.EMBOSS,
            ToolShape.LANCE, ToolShape.ROLLER);
    private static final Set<ToolShape> ROUND_OUTSIDE = EnumSet.of(ToolShape.ROUND, ToolShape.OBROUND, ToolShape.SINGLE_FLAT,
            ToolShape.DOUBLE_FLAT, ToolShape.COLLAR, ToolShape.COUNTERSINK);

    private ToolSizes() {
    }

    /** What family a shape belongs to. */
    public static ToolFamily familyOf(ToolShape shape) {
        if (shape == ToolShape.SLITTING) {
            return ToolFamily.SLITTING;
        }
        if (shape == ToolShape.MARKING) {
            return ToolFamily.MARKING;
        }
        return FORMING.contains(shape) ? ToolFamily.FORMING : ToolFamily.PUNCHING;
    }

    /** Whether a shape has a second dimension that must be given. */
    public static boolean needsWidth(ToolShape shape) {
        return TWO_DIMENSIONS.contains(shape);
    }

    /** Whether a tool cuts through: it has a slug, or parts. */
    public static boolean cuts(ToolShape shape) {
        ToolFamily family = familyOf(shape);
        return family == ToolFamily.PUNCHING || family == ToolFamily.SLITTING;
    }

    /** Diameter of the smallest circle about the tool's axis that holds the tool, mm; the body where that is larger. */
    public static double circumscribedMm(Tool tool) {
        double cutting = tool.getShape() == ToolShape.CLUSTER ? ofCluster(tool)
                : ofShape(tool.getShape(), tool.getLengthMm(), tool.getWidthMm(), tool.getCornerRadiusMm());
        return Math.max(cutting, tool.getBodyDiameterMm());
    }

    private static double ofCluster(Tool tool) {
        double single = ofShape(tool.getClusterShape(), tool.getLengthMm(), tool.getWidthMm(), tool.getCornerRadiusMm());
        double farthest = 0;
        for (ClusterPosition position : tool.getPositions()) {
            farthest = Math.max(farthest, Math.hypot(position.getXMm(), position.getYMm()));
        }
        return single + 2 * farthest;
    }

    private static double ofShape(ToolShape shape, double lengthMm, double widthMm, double cornerRadiusMm) {
        if (ROUND_OUTSIDE.contains(shape)) {
            return lengthMm;
        }
        if (shape == ToolShape.HEXAGON || shape == ToolShape.TRIANGLE) {
            return lengthMm * 2 / Math.sqrt(3);
        }
        double across = widthMm > 0 ? widthMm : lengthMm;
        double radius = shape == ToolShape.CORNER_RADIUS ? 0 : Math.min(cornerRadiusMm, Math.min(lengthMm, across) / 2);
        return Math.hypot(lengthMm - 2 * radius, across - 2 * radius) + 2 * radius;
    }
}
