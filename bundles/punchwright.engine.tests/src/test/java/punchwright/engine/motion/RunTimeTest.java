// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;

import punchwright.engine.geometry.Point;
import punchwright.engine.holding.Holding;
import punchwright.engine.holding.HoldingPlan;
import punchwright.engine.holding.SheetHit;
import punchwright.engine.sequence.Sequence;
import punchwright.engine.sequence.SequencedHit;
import punchwright.engine.sequence.Shop;
import punchwright.engine.tooling.HitRole;
import punchwright.engine.tooling.ToolShape;
import punchwright.engine.tooling.ToolUse;

/** Causes, sums and the lower bound; expected values worked out by hand from the times of the shop. */
class RunTimeTest {

    private static final ToolUse A = Shop.use(1, Shop.tool("A", ToolShape.ROUND, 10, 10), Shop.P1);
    private static final ToolUse B = Shop.use(2, Shop.tool("B", ToolShape.SQUARE, 10, 10), Shop.P2);
    private static final ToolUse HAND = Shop.use(3, Shop.tool("C", ToolShape.SQUARE, 20, 20), null);
    private static final ToolUse TURNED = Shop.use(4, Shop.tool("D", ToolShape.RECTANGLE, 50, 5), Shop.P1);
    private static final ToolUse I1 = Shop.insert(5, Shop.tool("E", ToolShape.ROUND, 4, 4), 1);
    private static final ToolUse I2 = Shop.insert(6, Shop.tool("F", ToolShape.ROUND, 5, 5), 2);

    @Test
    void changesByKindAndBackToTheFirstTool() {
        Timeline t = MoveTimeValidationTest.time(List.of(at(0, A, 0), at(1, B, 0), at(2, HAND, 0), at(3, I1, 0), at(4, I2, 0)),
                0);
        assertEquals(2 * 4, t.secondsByCause().get(Cause.TOOL_CHANGE), 1e-9, "A to B, and the last insert's holder to A");
        assertEquals(2 * 12, t.secondsByCause().get(Cause.HAND_CHANGE), 1e-9, "in and out by hand");
        assertEquals(0.8, t.secondsByCause().get(Cause.INSERT_CHANGE), 1e-9);
    }

    @Test
    void turningTheToolOverlapsTheMove() {
        SheetHit first = at(0, TURNED, 0);
        SheetHit second = new SheetHit(1, TURNED, new Point(100, 0), 90, HitRole.PIERCE, 1, 0);
        Timeline t = MoveTimeValidationTest.time(List.of(first, second), 0);
        assertEquals(0.2, t.secondsByCause().get(Cause.MOVE), 1e-9);
        assertEquals(90 / 180.0 - 0.2, t.secondsByCause().get(Cause.TURN_TOOL), 1e-9);
    }

    @Test
    void repositionTurnOverAndParts() {
        List<SheetHit> hits = List.of(at(0, A, 0), at(1, A, 100), at(2, A, 0));
        HoldingPlan plan = new HoldingPlan(List.of(new Holding(0, Shop.clamps(false), List.of(0)),
                new Holding(1, Shop.clamps(false), List.of(1)), new Holding(2, Shop.clamps(true), List.of(2))), List.of());
        Sequence s = new Sequence(List.of(new SequencedHit(hits.get(0), 0), new SequencedHit(hits.get(1), 1),
                new SequencedHit(hits.get(2), 2)), List.of());
        Timeline t = RunTime.of(new MotionJob(Shop.machine(), plan, s, 4));
        assertEquals(6, t.secondsByCause().get(Cause.REPOSITION), 1e-9);
        assertEquals(40, t.secondsByCause().get(Cause.TURN_OVER), 1e-9);
        assertEquals(12, t.secondsByCause().get(Cause.PART_REMOVAL), 1e-9);
        assertEquals(30 + 20 + 6 + 40 + 12 + 0.2 + 3 * 0.15, t.totalS(), 1e-9);
    }

    @Test
    void everySecondHasACause() {
        Timeline t = MoveTimeValidationTest.time(mixed(200, 5), 3);
        double at = 0;
        for (Event e : t.events()) {
            assertEquals(at, e.startS(), 1e-9);
            assertTrue(e.durationS() > 0);
            at += e.durationS();
        }
        assertEquals(t.totalS(), at, 1e-9);
        assertEquals(t.totalS(), t.secondsByCause().values().stream().mapToDouble(x -> x).sum(), 1e-9);
    }

    /** Every order of six hits of three tools is tried; none may beat the bound. */
    @Test
    void noOrderBeatsTheBound() {
        for (int seed = 0; seed < 40; seed++) {
            List<SheetHit> hits = mixed(6, seed);
            double bound = MoveTimeValidationTest.time(hits, 0).boundS();
            double best = best(new ArrayList<>(hits), 0);
            assertTrue(bound <= best + 1e-9, "seed " + seed + ": bound " + bound + " s, best " + best + " s");
            assertTrue(bound > 50 + 6 * 0.1, "the bound counts load, unload and strokes");
        }
    }

    @Test
    void unknownHoldingIsNamed() {
        Sequence s = new Sequence(List.of(new SequencedHit(at(0, A, 0), 2)), List.of());
        MotionJob job = new MotionJob(Shop.machine(), Shop.oneHolding(List.of()), s, 0);
        assertTrue(assertThrows(IllegalArgumentException.class, () -> RunTime.of(job)).getMessage().contains("holding"));
    }

    private static double best(List<SheetHit> hits, int from) {
        if (from == hits.size()) {
            return MoveTimeValidationTest.time(List.copyOf(hits), 0).totalS();
        }
        double best = Double.POSITIVE_INFINITY;
        for (int i = from; i < hits.size(); i++) {
            java.util.Collections.swap(hits, from, i);
            best = Math.min(best, best(hits, from + 1));
            java.util.Collections.swap(hits, from, i);
        }
        return best;
    }

    private static List<SheetHit> mixed(int n, long seed) {
        Random random = new Random(seed);
        ToolUse[] uses = {A, B, I1, I2, HAND, TURNED};
        List<SheetHit> hits = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            HitRole role = random.nextBoolean() ? HitRole.PIERCE : HitRole.NIBBLE;
            hits.add(new SheetHit(i, uses[random.nextInt(3 + (int) (seed % 4))],
                    new Point(random.nextInt(40) * 5, random.nextInt(40) * 5), random.nextInt(4) * 45, role, 0, 0));
        }
        return hits;
    }

    private static SheetHit at(int id, ToolUse use, double x) {
        return Shop.hit(id, use, x, 0, HitRole.PIERCE);
    }
}
