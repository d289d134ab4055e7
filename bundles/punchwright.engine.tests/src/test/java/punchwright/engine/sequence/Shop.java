// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.sequence;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;

import punchwright.engine.geometry.Point;
import punchwright.engine.holding.ClampArrangement;
import punchwright.engine.holding.Holding;
import punchwright.engine.holding.HoldingPlan;
import punchwright.engine.holding.SheetHit;
import punchwright.engine.press.Axis;
import punchwright.engine.press.Clamps;
import punchwright.engine.press.HeadKind;
import punchwright.engine.press.Machine;
import punchwright.engine.press.Place;
import punchwright.engine.press.Times;
import punchwright.engine.tooling.AngleFreedom;
import punchwright.engine.tooling.HitRole;
import punchwright.engine.tooling.Holder;
import punchwright.engine.tooling.ShearKind;
import punchwright.engine.tooling.Tool;
import punchwright.engine.tooling.ToolRoom;
import punchwright.engine.tooling.ToolShape;
import punchwright.engine.tooling.ToolUse;

/** A small press with a few tools for the tests of order, time and proof. */
public final class Shop {

    /** 1000 mm/s and 10 000 mm/s2 along x, half of both across. */
    public static final Axis X = new Axis(1000, 10000);
    public static final Axis Y = new Axis(500, 5000);
    public static final Times TIMES = new Times(0.05, 0.1, 600, 8, 4, 12, 0.8, 180, 6, 40, 30, 20, 3);
    public static final Place P1 = new Place("1", 90, 300000, true, 0.03, true);
    public static final Place P2 = new Place("2", 90, 300000, false, 0, false);
    public static final Place P3 = new Place("3", 90, 300000, false, 0, false);
    public static final Holder MULTI = new Holder("M", "six inserts", 6, 16, 60000, false, 85, 1);

    private Shop() {
    }

    public static Machine machine() {
        return new Machine("press", "press", 1250, 2000, 1250, X, Y, 4000, 0.5, 6, 150, 300000, HeadKind.TURRET,
                List.of(P1, P2, P3), new Clamps(3, 80, 60, 5, 0, 2000, 200), TIMES, 150, 0.1);
    }

    public static Tool tool(String id, ToolShape shape, double length, double width) {
        return new Tool(id, id, shape, length, width, 0, AngleFreedom.ANY, 0, List.of(0.2, 0.3), ShearKind.FLAT, 0, 100, 10, 5,
                Map.of(), 0, 1, shape.forms() ? 3 : 0, List.of(), null);
    }

    /** A forming tool of a height, up positive, with what its record says of the room around it. */
    public static Tool form(String id, ToolShape shape, double length, double width, double heightMm, ToolRoom room) {
        Tool t = tool(id, shape, length, width);
        return new Tool(id, id, shape, length, width, 0, t.freedom(), 0, List.of(), t.shear(), 0, 100, 10, 5, Map.of(), 0, 1,
                heightMm, List.of(), null, room);
    }

    public static ToolUse use(int number, Tool tool, Place place) {
        return new ToolUse(number, tool, place, null, 0, place != null && place.turns(), 0);
    }

    public static ToolUse insert(int number, Tool tool, int insert) {
        return new ToolUse(number, tool, P1, MULTI, insert, false, 0);
    }

    public static SheetHit hit(int id, ToolUse use, double x, double y, HitRole role) {
        return new SheetHit(id, use, new Point(x, y), 0, role, id, 0);
    }

    /** All hits in one holding that reaches everything. */
    public static HoldingPlan oneHolding(List<SheetHit> hits) {
        return new HoldingPlan(List.of(new Holding(0, clamps(false), hits.stream().map(SheetHit::id).toList())), List.of());
    }

    public static ClampArrangement clamps(boolean turned) {
        return new ClampArrangement(List.of(200.0, 1000.0), 0, 2000, turned);
    }

    public static SequenceJob job(List<SheetHit> hits) {
        return new SequenceJob(machine(), hits, oneHolding(hits), 1_000_000, 1);
    }

    /** The same with a thickness in mm. */
    public static SequenceJob job(List<SheetHit> hits, double thicknessMm) {
        return new SequenceJob(machine(), hits, oneHolding(hits), 1_000_000, 1, thicknessMm);
    }

    /** Single hits of one tool at random whole millimetres. */
    public static List<SheetHit> scattered(int n, long seed, ToolUse use) {
        Random random = new Random(seed);
        return new ArrayList<>(IntStream.range(0, n)
                .mapToObj(i -> hit(i, use, random.nextInt(2000), random.nextInt(1000), HitRole.PIERCE)).toList());
    }
}
