// SPDX-License-Identifier: EPL-2.0
package punchwright.benchmarks.advice;

import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;

import punchwright.engine.advice.Advice;
import punchwright.engine.advice.AdviceJob;
import punchwright.engine.advice.AdviceOptions;
import punchwright.engine.advice.Advisor;
import punchwright.engine.advice.BookMachine;
import punchwright.engine.advice.BookOrder;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Shape;
import punchwright.engine.planning.PartDemand;
import punchwright.engine.planning.Progress;
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

/** {@code bench advise [--parts N] [--seed S]}: the advice on a seeded order book. */
public final class AdviceBench {

    private static final Material STEEL = new Material("M1", "DC01", MaterialGroup.MILD_STEEL, 7.85, 270, 410, 320,
            ClearanceRule.PERCENT, 20, 1, 1.0);
    private static final int PARTS_PER_ORDER = 10;

    private AdviceBench() {
    }

    /** Prints one line; returns the exit code, 2 for arguments that make no sense. */
    public static int run(List<String> arguments, PrintStream out, PrintStream err) {
        int parts = 40;
        int seed = 1;
        for (int i = 0; i + 1 < arguments.size(); i += 2) {
            switch (arguments.get(i)) {
                case "--parts" -> parts = Integer.parseInt(arguments.get(i + 1));
                case "--seed" -> seed = Integer.parseInt(arguments.get(i + 1));
                default -> {
                    err.println("bench advise takes --parts N and --seed S; given: " + arguments.get(i));
                    return 2;
                }
            }
        }
        AdviceJob job = new AdviceJob(orders(parts, new Random(seed)), List.of(new BookMachine(press(), 90)), tools(), List.of(),
                List.of(), 42, 2.5, ToolingRules.USUAL, AdviceOptions.USUAL);
        long before = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        Advice a = Advisor.advise(job, Progress.SILENT);
        double seconds = (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - before) / 1e9;
        out.println(String.format(Locale.ROOT,
                "%d parts, %d tools: %d additions, %d worked out, %d choices, %.1f s of the processor; best saves %.2f a year",
                        parts,
                job.tools().size(), a.additions(), a.workedOut(), a.choices(), seconds,
                a.ranking().isEmpty() ? 0 : a.ranking().getFirst().saving().perYear()));
        return 0;
    }

    private static List<BookOrder> orders(int parts, Random random) {
        List<BookOrder> orders = new ArrayList<>();
        for (int i = 0; i < parts; i += PARTS_PER_ORDER) {
            List<PartDemand> demands = new ArrayList<>();
            for (int j = i; j < Math.min(parts, i + PARTS_PER_ORDER); j++) {
                demands.add(plate("P" + j, random));
            }
            orders.add(new BookOrder("O" + i, 6, demands));
        }
        return orders;
    }

    private static PartDemand plate(String id, Random random) {
        List<Contour> holes = new ArrayList<>();
        int columns = 2 + random.nextInt(4);
        for (int i = 0; i < columns; i++) {
            Point at = new Point(30 + 45 * i, 30);
            double size = 4 + 0.5 * random.nextInt(50);
            holes.add(random.nextInt(3) == 0 ? Contour.rectangle(at.x() - size / 2, at.y() - 5, size, 10) : Contour.circle(at,
                    size));
        }
        double row = 4 + 0.5 * random.nextInt(8);
        for (int i = 0; i < 3 * columns; i++) {
            holes.add(Contour.circle(new Point(25 + 15 * i, 75), row));
        }
        Contour outer = Contour.rectangle(0, 0, 60 + 45.0 * columns, 100 + random.nextInt(60));
        return new PartDemand(id, "plate " + id, new Shape(outer, holes.stream().map(h -> h.oriented(false)).toList()),
                List.of(), STEEL,
                2, 20 + random.nextInt(200), List.of(0.0, 90.0));
    }

    private static List<Tool> tools() {
        List<Tool> tools = new ArrayList<>();
        for (int d = 4; d <= 30; d++) {
            tools.add(tool(ToolShape.ROUND, d, d));
        }
        for (int a = 5; a <= 40; a += 5) {
            tools.add(tool(ToolShape.SQUARE, a, a));
        }
        for (int l = 15; l <= 70; l += 5) {
            tools.add(tool(ToolShape.RECTANGLE, l, 5));
            tools.add(tool(ToolShape.RECTANGLE, l, 10));
        }
        tools.add(tool(ToolShape.SLITTING, 76, 5));
        return tools;
    }

    private static Tool tool(ToolShape shape, double l, double w) {
        return new Tool(shape.name().charAt(0) + "-" + l + "x" + w, shape.name() + " " + l + " x " + w, shape, l, w, 0,
                AngleFreedom.ANY,
                0, List.of(0.2, 0.4, 0.6), ShearKind.FLAT, 0, 60 + l + w, 8, 6, Map.of(MaterialGroup.MILD_STEEL, 60_000), 0, 2,
                        0, List
                        .of(), null);
    }

    private static Machine press() {
        List<Place> places = new ArrayList<>();
        for (int i = 1; i <= 20; i++) {
            places.add(new Place("" + i, 98, 220_000, true, 0.02, true));
        }
        return new Machine("P1", "press", 1300, 2500, 1280, new Axis(1300, 13_000), new Axis(1000, 10_000), 5000, 0.5, 8, 200,
                220_000,
                HeadKind.SINGLE_HEAD, places, new Clamps(3, 90, 70, 10, 150, 2300, 200),
                new Times(0.02, 0.06, 600, 4, 4, 40, 1, 360, 6, 20, 45, 40, 4), 400, 0.1);
    }
}
