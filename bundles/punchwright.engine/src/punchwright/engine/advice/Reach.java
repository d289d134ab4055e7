// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.advice;

import punchwright.engine.feature.Feature;
import punchwright.engine.geometry.Arc;
import punchwright.engine.tooling.Tool;
import punchwright.engine.tooling.ToolFootprint;
import punchwright.engine.tooling.ToolShape;
import punchwright.engine.tooling.ToolingRules;

/** Which features a tool can take part in making, never too few: by shape and area, before any hit is laid. */
final class Reach {

    private Reach() {
    }

    /** Whether the tool cuts along edges of any size. */
    static boolean cutsEdges(Tool tool) {
        return switch (tool.shape()) {
            case ROUND, SQUARE, RECTANGLE, SLITTING, CORNER_RADIUS -> true;
            default -> false;
        };
    }

    static boolean meets(Tool tool, BookPart part, ToolingRules rules) {
        return part.features().features().stream().anyMatch(f -> meets(tool, f, rules));
    }

    static boolean meets(Tool tool, Feature f, ToolingRules rules) {
        if (tool.shape().forms()) {
            return tool.shape().name().equalsIgnoreCase(f.form());
        }
        if (tool.shape() == ToolShape.CORNER_RADIUS) {
            return f.path().stream().anyMatch(Arc.class::isInstance);
        }
        if (cutsEdges(tool)) {
            return f.isOpening() || !f.path().isEmpty();
        }
        return f.isOpening() && sameArea(f, tool, rules);
    }

    /** Whether one punch of the tool and the opening have the same area within the tolerance of size all round. */
    static boolean sameArea(Feature f, Tool tool, ToolingRules rules) {
        double punches = tool.shape() == ToolShape.CLUSTER ? tool.cluster().size() : 1;
        double area = ToolFootprint.areaMm2(tool) / punches;
        return Math.abs(f.contour().areaMm2() - area) <= (rules.sizeToleranceMm() + 0.01) * f.contour().lengthMm() + 1e-6;
    }
}
