// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.holding;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;

import punchwright.engine.geometry.Point;
import punchwright.engine.press.Axis;
import punchwright.engine.press.Clamps;
import punchwright.engine.press.HeadKind;
import punchwright.engine.press.Machine;
import punchwright.engine.press.Times;
import punchwright.engine.tooling.AngleFreedom;
import punchwright.engine.tooling.HitRole;
import punchwright.engine.tooling.ShearKind;
import punchwright.engine.tooling.Tool;
import punchwright.engine.tooling.ToolShape;
import punchwright.engine.tooling.ToolUse;

/** Machines, tools and hits for holding tests. */
final class HoldingJobs {

    private HoldingJobs() {
    }

    static Machine machine(double throatMm, double travelXMm, Clamps clamps) {
        Axis axis = new Axis(1000, 10_000);
        Times times = new Times(0.05, 0.12, 600, 4, 3, 40, 1, 180, 6, 60, 40, 30, 5);
        return new Machine("M", "Press", throatMm, travelXMm, throatMm, axis, axis, 10_000, 0.5, 6, 200, 300_000,
                HeadKind.SINGLE_HEAD, List.of(), clamps, times, 50, 0.1);
    }

    static ToolUse tool(ToolShape shape, double lengthMm, double widthMm) {
        Tool tool = new Tool(shape + " " + lengthMm + " x " + widthMm, "tool", shape, lengthMm, widthMm, 0, AngleFreedom.ANY, 0,
                List.of(0.2), ShearKind.FLAT, 0, 100, 10, 10, Map.of(), 0, 1, 0, List.of(), null);
        return new ToolUse(1, tool, null, null, 0, true, 0);
    }

    static SheetHit hit(int id, ToolUse tool, double x, double y) {
        return new SheetHit(id, tool, new Point(x, y), 0, HitRole.PIERCE, 1, id);
    }

    /** A few round hits on a small sheet, every length a multiple of 10 mm. */
    static HoldingJob random(long seed) {
        SplittableRandom r = new SplittableRandom(seed);
        double length = 10 * r.nextInt(12, 50);
        double travel = 10 * r.nextInt(10, 30);
        double width = 10 * r.nextInt(12, 30);
        double throat = r.nextInt(3) == 0 ? 10 * Math.ceil(width / 20) + 10 * r.nextInt(4) : width;
        double low = 20 + 10 * r.nextInt(3);
        Clamps clamps = new Clamps(1 + r.nextInt(2), 20 * r.nextInt(1, 3), 50, 10, low,
                low + 10 * r.nextInt(3, (int) Math.max(4, (travel - low) / 10)), 50);
        Set<Point> points = new LinkedHashSet<>();
        for (int i = 0, n = r.nextInt(2, 16); i < n; i++) {
            double y = r.nextInt(3) > 0 ? 40 : 10 * r.nextInt(8, (int) (width / 10));
            points.add(new Point(10 * r.nextInt(0, (int) (length / 10) + 1), y));
        }
        List<SheetHit> hits = new ArrayList<>();
        points.forEach(p -> hits.add(hit(hits.size(), tool(ToolShape.ROUND, 20, 20), p.x(), p.y())));
        return new HoldingJob(machine(throat, travel, clamps), length, width, hits);
    }
}
