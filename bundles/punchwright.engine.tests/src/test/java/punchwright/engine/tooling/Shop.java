// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.List;
import java.util.Map;

import punchwright.engine.geometry.Point;
import punchwright.engine.press.Axis;
import punchwright.engine.press.Clamps;
import punchwright.engine.press.ClearanceRule;
import punchwright.engine.press.HeadKind;
import punchwright.engine.press.Machine;
import punchwright.engine.press.Material;
import punchwright.engine.press.MaterialGroup;
import punchwright.engine.press.Place;
import punchwright.engine.press.Times;

/** A small invented shop for tests. */
final class Shop {

    static final Material STEEL = new Material("M1", "DC01", MaterialGroup.MILD_STEEL, 7.85, 270, 410, 320, ClearanceRule.PERCENT,
            20, 1, 1.0);

    private Shop() {
    }

    static Machine press() {
        List<Place> places = new java.util.ArrayList<>();
        for (int i = 1; i <= 16; i++) {
            places.add(new Place("" + i, 105, 220_000, true, 0.02, true));
        }
        return machine(220_000, HeadKind.SINGLE_HEAD, places);
    }

    static Machine machine(double forceN, HeadKind head, List<Place> places) {
        return new Machine("P1", "press one", 1300, 2500, 1280, new Axis(1300, 13_000), new Axis(1000, 10_000), 5000, 0.5, 8, 200,
                forceN, head, places, new Clamps(3, 90, 70, 10, 150, 2300, 200),
                new Times(0.02, 0.06, 600, 4, 4, 40, 1, 360, 6, 20, 45, 40, 4), 400, 0.1);
    }

    static Tool tool(String id, ToolShape shape, double l, double w, double r) {
        return new Tool(id, shape.name().toLowerCase(java.util.Locale.ROOT) + " " + l + (l == w ? "" : " x " + w), shape, l, w, r,
                AngleFreedom.ANY, 0, List.of(0.2, 0.3, 0.4, 0.6, 0.8), ShearKind.FLAT, 0, 200, 10, 6,
                Map.of(MaterialGroup.MILD_STEEL, 60_000), 0, 2, 0, List.of(), null);
    }

    static Tool round(double d) {
        return tool("R" + d, ToolShape.ROUND, d, d, 0);
    }

    static Tool rectangle(double l, double w) {
        return tool("Q" + l + "x" + w, l == w ? ToolShape.SQUARE : ToolShape.RECTANGLE, l, w, 0);
    }

    static Tool with(Tool t, AngleFreedom freedom, double fixed, int onHand) {
        return new Tool(t.id(), t.name(), t.shape(), t.lengthMm(), t.widthMm(), t.cornerRadiusMm(), freedom, fixed,
                t.clearancesTotalMm(), t.shear(), t.shearHeightMm(), t.price(), t.grindsLeft(), t.grindCost(), t.hitsPerGrind(),
                t.hitsSinceGrind(), onHand, t.formHeightMm(), t.cluster(), t.freeContour());
    }

    static Tool changed(Tool t, List<Double> clearances, ShearKind shear, double shearMm, int onHand, long hitsSinceGrind) {
        return new Tool(t.id(), t.name(), t.shape(), t.lengthMm(), t.widthMm(), t.cornerRadiusMm(), t.freedom(),
                t.fixedAngleDeg(), clearances, shear, shearMm, t.price(), t.grindsLeft(), t.grindCost(), t.hitsPerGrind(),
                hitsSinceGrind, onHand, t.formHeightMm(), t.cluster(), t.freeContour());
    }

    static List<Tool> tools() {
        return List.of(round(3), round(5), round(8), round(10), round(12), round(20), round(30), rectangle(5, 5),
                rectangle(10, 10), rectangle(30, 30), rectangle(50, 5), rectangle(76, 5), rectangle(15, 3),
                tool("O20x6", ToolShape.OBROUND, 20, 6, 3), tool("C40R5", ToolShape.CORNER_RADIUS, 40, 40, 5));
    }

    static ToolingJob job(punchwright.engine.feature.FeatureSet features, double t, List<Tool> tools) {
        return new ToolingJob(features, STEEL, t, press(), tools, List.of(), ToolingRules.USUAL);
    }

    static Point p(double x, double y) {
        return new Point(x, y);
    }
}
