// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.advice;

import java.util.Comparator;
import java.util.List;
import java.util.Map;

import punchwright.engine.tooling.AngleFreedom;
import punchwright.engine.tooling.ShearKind;
import punchwright.engine.tooling.Tool;
import punchwright.engine.tooling.ToolFootprint;
import punchwright.engine.tooling.ToolRoom;
import punchwright.engine.tooling.ToolShape;

/** Tools not owned: sizes from a draft, everything else as the nearest tool owned has it. */
final class Tools {

    private static final int USUAL_GRINDS = 8;

    private Tools() {
    }

    /** One punch of a cluster as a tool of another shape. */
    static Tool like(Tool t, ToolShape shape) {
        return new Tool(t.id(), t.name(), shape, t.lengthMm(), t.widthMm(), t.cornerRadiusMm(), t.freedom(), t.fixedAngleDeg(),
                t.clearancesTotalMm(), t.shear(), t.shearHeightMm(), t.price(), t.grindsLeft(), t.grindCost(), t.hitsPerGrind(),
                t.hitsSinceGrind(), t.onHand(), t.formHeightMm(), List.of(), null);
    }

    /** The draft as a new tool, flat ground, at a price; life as that of the owned tool nearest in shape and size. */
    static Tool make(Draft d, List<Tool> owned, double price) {
        Tool near = nearest(d, owned);
        int grinds = owned.stream().mapToInt(Tool::grindsLeft).max().orElse(USUAL_GRINDS);
        double height = d.shape().forms() ? near != null && near.shape() == d.shape() ? near.formHeightMm() : 3 : 0;
        return new Tool(d.id(), d.name(), d.shape(), d.lengthMm(), d.widthMm(), d.cornerRadiusMm(), AngleFreedom.ANY,
                d.angleDeg(), d.clearances(), ShearKind.FLAT, 0, price, grinds, near == null ? 0 : near.grindCost(), near == null
                        ? Map.of() : near.hitsPerGrind(), 0, 1, height, d.cluster(), d.contour(), room(d, near));
    }

    /** A new form of the same kind keeps as clear as the owned one. */
    private static ToolRoom room(Draft d, Tool near) {
        return d.shape().forms() && near != null && near.shape() == d.shape() ? near.room() : ToolRoom.NONE;
    }

    private static Tool nearest(Draft d, List<Tool> owned) {
        return owned.stream().filter(t -> t.shape().forms() == d.shape().forms())
                .min(Comparator.comparing((Tool t) -> t.shape() != d.shape()).thenComparing(t -> t.hitsPerGrind().isEmpty())
                        .thenComparing(t -> Math.abs(t.lengthMm() - d.lengthMm()) + Math.abs(t.widthMm() - d.widthMm()))
                        .thenComparing(Tool::id))
                .orElse(null);
    }

    static double diameterMm(Draft d) {
        return ToolFootprint.circumscribedDiameterMm(make(d, List.of(), 0));
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
