// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.sequence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;

import punchwright.engine.geometry.Point;
import punchwright.engine.holding.Holding;
import punchwright.engine.holding.HoldingPlan;
import punchwright.engine.holding.SheetHit;
import punchwright.engine.motion.Cause;
import punchwright.engine.motion.MotionJob;
import punchwright.engine.motion.RunTime;
import punchwright.engine.motion.Timeline;
import punchwright.engine.tooling.HitRole;
import punchwright.engine.tooling.ToolRoom;
import punchwright.engine.tooling.ToolShape;
import punchwright.engine.tooling.ToolUse;

/** Where the sheet stands during a reposition: the hold-down of 90 mm (the largest place of the test press) stays off forms. */
class ParkingTest {

    private static final ToolUse FORM = Shop.use(1, Shop.form("E", ToolShape.EMBOSS, 20, 20, 3, ToolRoom.NONE), Shop.P2);
    private static final ToolUse FLAT = Shop.use(1, Shop.form("M", ToolShape.MARKING, 20, 20, 0, ToolRoom.NONE), Shop.P2);
    private static final ToolUse ROUND = Shop.use(2, Shop.tool("R", ToolShape.ROUND, 10, 10), Shop.P3);

    private static SequenceJob job(ToolUse use, List<Point> first) {
        List<SheetHit> hits = new ArrayList<>();
        for (Point p : first) {
            hits.add(Shop.hit(hits.size(), use, p.x(), p.y(), HitRole.FORM));
        }
        List<Integer> ids = hits.stream().map(SheetHit::id).toList();
        hits.add(Shop.hit(hits.size(), ROUND, 1050, 230, HitRole.PIERCE));
        hits.add(Shop.hit(hits.size(), ROUND, 10, 30, HitRole.PIERCE));
        HoldingPlan plan = new HoldingPlan(List.of(new Holding(0, Shop.clamps(false), ids),
                new Holding(1, Shop.clamps(false), List.of(ids.size(), ids.size() + 1))), List.of());
        return new SequenceJob(Shop.machine(), hits, plan, 10_000, 1, 1);
    }

    @Test
    void theSheetMovesClearOfTheFormsBeforeTheReposition() {
        List<Point> forms = List.of(new Point(300, 200), new Point(340, 200), new Point(300, 250));
        Sequence s = Sequencer.order(job(FORM, forms));
        Point park = s.parks().get(0);
        assertTrue(forms.stream().allMatch(f -> f.distance(park) >= 45 + 10), park.toString());
        assertTrue(park.distance(s.hits().get(2).hit().at()) < 120, park.toString());
        assertEquals(List.of(), s.findings());
    }

    @Test
    void whatStandsNowhereNeedsNoMove() {
        assertTrue(Sequencer.order(job(FLAT, List.of(new Point(300, 200)))).parks().isEmpty());
    }

    /** Forms 40 mm apart over all the reach of the hits. */
    @Test
    void noRoomIsSaid() {
        List<Point> forms = new ArrayList<>();
        for (int i = 0; i < 26; i++) {
            for (int j = 0; j < 11; j++) {
                forms.add(new Point(30 + 40 * i, 30 + 40 * j));
            }
        }
        Sequence s = Sequencer.order(job(FORM, forms));
        assertTrue(s.parks().isEmpty());
        assertEquals(List.of("SEQUENCE-FORM-HELD-DOWN"), s.findings().stream().map(f -> f.code()).distinct().toList());
    }

    /** The move is timed: along x 1000 mm/s and 10 000 mm/s2, a move of d takes d / 1000 + 0.1 s from 100 mm on, and settling. */
    @Test
    void theMoveCounts() {
        SequenceJob job = job(FLAT, List.of(new Point(300, 200)));
        Sequence s = Sequencer.order(job);
        Sequence parked = new Sequence(s.hits(), s.findings(), java.util.Map.of(0, new Point(500, 200)));
        Timeline without = RunTime.of(new MotionJob(job.machine(), job.holdings(), s, 0));
        Timeline with = RunTime.of(new MotionJob(job.machine(), job.holdings(), parked, 0));
        double move = with.events().stream().filter(e -> e.cause() == Cause.MOVE && e.hitId() < 0).mapToDouble(e -> e.durationS())
                .sum();
        assertEquals(0.3, move, 1e-9);
        assertTrue(with.totalS() - without.totalS() <= move + 0.3 && with.totalS() > without.totalS() - 0.3);
        assertEquals(with.totalS(), with.events().stream().mapToDouble(e -> e.durationS()).sum(), 1e-9);
    }
}
