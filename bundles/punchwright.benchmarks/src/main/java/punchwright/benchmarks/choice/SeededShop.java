// SPDX-License-Identifier: EPL-2.0
package punchwright.benchmarks.choice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import punchwright.engine.feature.FeatureRecognition;
import punchwright.engine.feature.FeatureSet;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Pose;
import punchwright.engine.geometry.Shape;
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
import punchwright.engine.tooling.Elsewhere;
import punchwright.engine.tooling.Holder;
import punchwright.engine.tooling.OrderPart;
import punchwright.engine.tooling.Readiness;
import punchwright.engine.tooling.ShearKind;
import punchwright.engine.tooling.Tool;
import punchwright.engine.tooling.ToolShape;
import punchwright.engine.tooling.ToolWishes;
import punchwright.engine.tooling.ToolingJob;
import punchwright.engine.tooling.ToolingRules;

/**
 * An invented shop from a seed: a library of many tools, a machine with too few places for all, parts with holes of all kinds.
 */
final class SeededShop {

    private static final double THICKNESS_MM = 2;
    private static final double CELL_MM = 60;
    private static final Material STEEL = new Material("M1", "DC01", MaterialGroup.MILD_STEEL, 7.85, 270, 410, 320,
            ClearanceRule.PERCENT, 20, 1, 1.0);

    private final Random random;
    private final HeadKind head;
    private final Map<String, Tool> tools = new LinkedHashMap<>();
    private final List<double[]> sizes = new ArrayList<>();

    SeededShop(long seed, int toolCount, HeadKind head) {
        random = new Random(seed);
        this.head = head;
        base();
        for (int tries = 0; tools.size() < toolCount && tries < 100_000; tries++) {
            addTool();
        }
        for (int i = 0; i < 40; i++) {
            sizes.add(new double[] { half(3, 45), half(10, 45), half(4, 20), random.nextInt(6), random.nextInt(4) == 0
                    ? 90 : 0 });
        }
    }

    private double half(int from, int to) {
        return from + 0.5 * random.nextInt(2 * (to - from) + 1);
    }

    private void base() {
        for (double d : new double[] { 3, 4, 5, 6, 8, 10, 12, 16, 20 }) {
            add(ToolShape.ROUND, d, d, 0);
        }
        add(ToolShape.SLITTING, 76, 5, 0);
        add(ToolShape.SLITTING, 50, 5, 0);
        add(ToolShape.RECTANGLE, 30, 4, 0);
        add(ToolShape.RECTANGLE, 15, 3, 0);
        add(ToolShape.SQUARE, 5, 5, 0);
        add(ToolShape.SQUARE, 10, 10, 0);
        add(ToolShape.SQUARE, 30, 30, 0);
    }

    private void addTool() {
        double l = half(8, 50);
        double w = half(4, 20);
        switch (random.nextInt(6)) {
            case 0, 1 -> add(ToolShape.ROUND, half(2, 60), 0, 0);
            case 2 -> add(ToolShape.RECTANGLE, Math.max(l, w + 1), w, 0);
            case 3 -> add(ToolShape.OBROUND, Math.max(l, w + 2), w, w / 2);
            case 4 -> add(ToolShape.SQUARE, half(4, 40), 0, 0);
            default -> add(ToolShape.SLITTING, 30 + random.nextInt(60), 4 + random.nextInt(4), 0);
        }
    }

    private void add(ToolShape shape, double l, double w, double r) {
        String id = shape + " " + l + (w > 0 ? " x " + w : "");
        AngleFreedom freedom = random.nextInt(3) == 0 ? AngleFreedom.QUARTER : AngleFreedom.ANY;
        tools.putIfAbsent(id, new Tool(id, id, shape, l, w > 0 ? w : l, r, freedom, 0, List.of(0.2, 0.3, 0.4, 0.6),
                ShearKind.FLAT, 0,
                80 + 3 * l, 10, 6, Map.of(MaterialGroup.MILD_STEEL, 60_000), 0, 1 + random.nextInt(2), 0, List.of(), null));
    }

    private Machine machine() {
        List<Place> places = new ArrayList<>();
        for (int i = 1; i <= 20; i++) {
            double diameter = i <= 8 ? 32 : i <= 14 ? 52 : 105;
            places.add(new Place("" + i, diameter, 200_000, i > 12, i > 12 ? 0.02 : 0, i > 14));
        }
        return new Machine("P1", "press", 1300, 2500, 1280, new Axis(1300, 13_000), new Axis(1000, 10_000), 5000, 0.5, 8, 200,
                200_000, head, places, new Clamps(3, 90, 70, 10, 150, 2300, 200),
                new Times(0.02, 0.06, 600, 4, 4, 40, 1, 360, 6, 20, 45, 40, 4), 400, 0.1);
    }

    private static List<Holder> holders() {
        return List.of(new Holder("H6", "six", 6, 16, 60_000, true, 100, 2));
    }

    /** A part with the given number of openings in a grid; four edges come on top. */
    OrderPart part(String name, int openings, int pieces) {
        int columns = (int) Math.ceil(Math.sqrt(openings * 1.5));
        List<Contour> holes = new ArrayList<>();
        for (int i = 0; i < openings; i++) {
            double x = CELL_MM * (i % columns + 0.5);
            double y = CELL_MM * (i / columns + 0.5);
            holes.add(opening(sizes.get(random.nextInt(sizes.size()))).moved(Pose.at(x, y, 0)));
        }
        int rows = (openings + columns - 1) / columns;
        Shape shape = new Shape(Contour.rectangle(0, 0, columns * CELL_MM, rows * CELL_MM), holes);
        FeatureSet features = FeatureRecognition.recognise(name, shape);
        ToolingJob job = new ToolingJob(features, STEEL, THICKNESS_MM, machine(), List.copyOf(tools.values()), holders(),
                ToolingRules.USUAL);
        return new OrderPart(job, ToolWishes.NONE, pieces, 0);
    }

    /** The part in sheet for which few tools are allowed; {@code asked}: with other machines and materials for ways out. */
    ToolingJob thick(OrderPart part, double thicknessMm, boolean asked) {
        ToolingJob j = part.job();
        Material soft = new Material("M2", "EN AW-1050", MaterialGroup.ALUMINIUM, 2.7, 70, 110, 80, ClearanceRule.PERCENT, 15, 2,
                0.8);
        Material hard = new Material("M3", "1.4301", MaterialGroup.STAINLESS_STEEL, 7.9, 520, 720, 560, ClearanceRule.PERCENT, 25,
                0.5, 1.5);
        Machine m = j.machine();
        Machine other = new Machine("P2", "stronger press", m.throatDepthMm(), m.travelXMm(), m.travelYMm(), m.xAxis(), m.yAxis(),
                m.longestSheetMm(), m.minThicknessMm(), m.maxThicknessMm(), m.maxSheetMassKg(), 2 * m.pressForceN(), m.headKind(),
                m.places(), m.clamps(), m.times(), m.dropOpeningMm(), m.accuracyMm(), m.options());
        return new ToolingJob(j.features(), STEEL, thicknessMm, m, j.tools(), j.holders(), j.rules(), asked
                ? new Elsewhere(List.of(m, other), List.of(STEEL, soft, hard)) : Elsewhere.NOTHING);
    }

    private static Contour opening(double[] s) {
        double l = s[1];
        double w = Math.min(s[2], l - 1);
        Contour c = switch ((int) s[3]) {
            case 0, 1, 2 -> Contour.circle(new Point(0, 0), s[0]);
            case 3 -> Contour.rectangle(-l / 2, -w / 2, l, w);
            case 4 -> Contour.rectangle(-w, -w, 2 * w, 2 * w);
            default -> Contour.rectangle(-l / 2, -l / 4, l, l / 2);
        };
        return c.moved(Pose.at(0, 0, s[4]));
    }

    /** An order of many parts. */
    List<OrderPart> order(int parts, int openingsEach) {
        List<OrderPart> all = new ArrayList<>();
        for (int i = 0; i < parts; i++) {
            all.add(part("part " + (i + 1), openingsEach, 1 + random.nextInt(40)));
        }
        return all;
    }

    Readiness readiness(double runs) {
        List<String> ids = List.copyOf(tools.keySet());
        return new Readiness(List.of(new Readiness.Standing("15", ids.get(9), null),
                new Readiness.Standing("1", ids.get(3), null)), 120, runs);
    }
}
