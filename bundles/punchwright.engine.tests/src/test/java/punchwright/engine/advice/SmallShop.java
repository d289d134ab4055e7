// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;

import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Shape;
import punchwright.engine.planning.PartDemand;
import punchwright.engine.press.Axis;
import punchwright.engine.press.Clamps;
import punchwright.engine.press.ClearanceRule;
import punchwright.engine.press.HeadKind;
import punchwright.engine.press.Machine;
import punchwright.engine.press.Material;
import punchwright.engine.press.MaterialGroup;
import punchwright.engine.press.Place;
import punchwright.engine.press.Times;
import punchwright.engine.tooling.AngleFreedom;
import punchwright.engine.tooling.ShearKind;
import punchwright.engine.tooling.Tool;
import punchwright.engine.tooling.ToolShape;
import punchwright.engine.tooling.ToolingRules;

/** An invented shop with small order books, from a seed where chance is wanted. */
final class SmallShop {

    static final Material STEEL = new Material("M1", "DC01", MaterialGroup.MILD_STEEL, 7.85, 270, 410, 320, ClearanceRule.PERCENT,
            20, 1, 1.0);
    private static final double[] DIAMETERS = { 6, 9, 14, 18, 22, 27 };

    private SmallShop() {
    }

    static Machine press(int places) {
        return press(places, places);
    }

    static Machine pressThatDoesNotTurn(int places) {
        return press(places, 0);
    }

    static Machine withFirstPlaceTurning(Machine m) {
        return press(m.places().size(), 1);
    }

    private static Machine press(int places, int turning) {
        List<Place> all = new ArrayList<>();
        for (int i = 1; i <= places; i++) {
            all.add(new Place("" + i, 76, 220_000, i <= turning, 0.02, true));
        }
        return new Machine("P1", "press one", 1300, 2500, 1280, new Axis(1300, 13_000), new Axis(1000, 10_000), 5000, 0.5, 8, 200,
                220_000, HeadKind.SINGLE_HEAD, all, new Clamps(3, 90, 70, 10, 150, 2300, 200),
                new Times(0.02, 0.06, 600, 4, 4, 40, 1, 360, 6, 20, 45, 40, 4), 400, 0.1);
    }

    static Tool tool(ToolShape shape, double l, double w, double price) {
        return new Tool(shape.name().charAt(0) + "-" + l + "x" + w, shape.name() + " " + l + " x " + w, shape, l, w, 0,
                AngleFreedom.ANY, 0, List.of(0.2, 0.4, 0.6), ShearKind.FLAT, 0, price, 8, 6, Map.of(MaterialGroup.MILD_STEEL,
                        60_000), 0,
                2, 0, List.of(), null);
    }

    static List<Tool> tools() {
        return List.of(tool(ToolShape.ROUND, 6, 6, 70), tool(ToolShape.ROUND, 14, 14, 85), tool(ToolShape.ROUND, 20, 20, 100),
                tool(ToolShape.RECTANGLE, 30, 5, 130), tool(ToolShape.SLITTING, 50, 5, 170), tool(ToolShape.SQUARE, 10, 10, 110));
    }

    static PartDemand plate(String id, double length, double width, int quantity, List<Contour> holes) {
        return new PartDemand(id, "plate " + id, new Shape(Contour.rectangle(0, 0, length, width), holes.stream()
                .map(h -> h.oriented(
                false)).toList()), List.of(), STEEL, 2, quantity, List.of(0.0, 90.0));
    }

    /** A plate with two or three holes on a raster of 45 mm, some round, some rectangular. */
    static PartDemand randomPlate(String id, Random random) {
        List<Contour> holes = new ArrayList<>();
        int n = 2 + random.nextInt(2);
        for (int i = 0; i < n; i++) {
            Point at = new Point(30 + 45 * i, 35);
            holes.add(random.nextInt(3) > 0 ? Contour.circle(at, DIAMETERS[random.nextInt(DIAMETERS.length)])
                    : Contour.rectangle(at.x() - 8, at.y() - 6, 16, 10 + random.nextInt(6)));
        }
        return plate(id, 60 + 45 * n, 70 + random.nextInt(30), 10 + random.nextInt(90), holes);
    }

    static AdviceJob job(List<BookOrder> orders, List<Tool> tools, AdviceOptions options) {
        return new AdviceJob(orders, List.of(new BookMachine(press(14), 90)), tools, List.of(), List.of(), 42, 2.5,
                ToolingRules.USUAL,
                options);
    }

    static AdviceOptions options(int top, boolean pruned) {
        return new AdviceOptions(top, 100_000, Map.of(), pruned, pruned);
    }
}
