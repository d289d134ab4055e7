// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.advice;

import java.util.List;

import punchwright.engine.tooling.Tool;
import punchwright.engine.tooling.ToolShape;

/** Tools that differ in one thing from another one. */
final class Tools {

    private Tools() {
    }

    /** One punch of a cluster as a tool of another shape. */
    static Tool like(Tool t, ToolShape shape) {
        return new Tool(t.id(), t.name(), shape, t.lengthMm(), t.widthMm(), t.cornerRadiusMm(), t.freedom(), t.fixedAngleDeg(),
                t.clearancesTotalMm(), t.shear(), t.shearHeightMm(), t.price(), t.grindsLeft(), t.grindCost(), t.hitsPerGrind(),
                t.hitsSinceGrind(), t.onHand(), t.formHeightMm(), List.of(), null);
    }

    static Tool withClearances(Tool t, List<Double> clearances) {
        return new Tool(t.id(), t.name(), t.shape(), t.lengthMm(), t.widthMm(), t.cornerRadiusMm(), t.freedom(),
                t.fixedAngleDeg(),
                clearances, t.shear(), t.shearHeightMm(), t.price(), t.grindsLeft(), t.grindCost(), t.hitsPerGrind(),
                t.hitsSinceGrind(), t.onHand(), t.formHeightMm(), t.cluster(), t.freeContour(), t.room());
    }

    static Tool withOneMore(Tool t) {
        return new Tool(t.id(), t.name(), t.shape(), t.lengthMm(), t.widthMm(), t.cornerRadiusMm(), t.freedom(),
                t.fixedAngleDeg(),
                t.clearancesTotalMm(), t.shear(), t.shearHeightMm(), t.price(), t.grindsLeft(), t.grindCost(), t.hitsPerGrind(),
                t.hitsSinceGrind(), t.onHand() + 1, t.formHeightMm(), t.cluster(), t.freeContour(), t.room());
    }
}
