// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.holding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

import org.junit.jupiter.api.Test;

import punchwright.engine.finding.Finding;
import punchwright.engine.geometry.Point;
import punchwright.engine.press.Clamps;
import punchwright.engine.sequence.Shop;
import punchwright.engine.tooling.HitRole;
import punchwright.engine.tooling.ToolRoom;
import punchwright.engine.tooling.ToolShape;
import punchwright.engine.tooling.ToolUse;

/** Forms come after what is cut beside them, across holdings too, and no clamp of a later holding stands on them. */
class FormStandsTest {

    private static final int CASES = Integer.getInteger("punchwright.forms", 150);
    private static final Clamps TWO = new Clamps(2, 80, 50, 10, 100, 900, 300);
    private static final ToolUse FORM = Shop.use(1, Shop.form("E", ToolShape.EMBOSS, 20, 20, 3, new ToolRoom(15, 0, 0, 0)),
            null);
    private static final ToolUse ROUND = Shop.use(2, Shop.tool("R", ToolShape.ROUND, 10, 10), null);

    private static SheetHit hit(int id, ToolUse use, double x, double y, HitRole role, int operation, int placement) {
        return new SheetHit(id, use, new Point(x, y), 0, role, operation, placement);
    }

    private static HoldingJob job(double lengthMm, List<SheetHit> hits) {
        return new HoldingJob(HoldingJobs.machine(1250, 1000, TWO), lengthMm, 600, hits, 1);
    }

    private static int holdingOf(HoldingPlan plan, int hit) {
        return plan.holdings().stream().filter(h -> h.hitIds().contains(hit)).findFirst().orElseThrow().index();
    }

    /** Travel 1000, sheet 1800: the part's far hole is reached only in the second holding, so its form waits for it. */
    @Test
    void aFormWaitsForTheCutBesideItInALaterHolding() {
        List<SheetHit> hits = List.of(hit(0, FORM, 950, 300, HitRole.FORM, 1, 0), hit(1, ROUND, 100, 300, HitRole.PIERCE, 2, 0),
                hit(2, ROUND, 1700, 300, HitRole.PIERCE, 3, 1), hit(3, ROUND, 975, 300, HitRole.PIERCE, 4, 1));
        HoldingPlan plan = HoldingPlanner.plan(job(1800, hits));
        assertEquals(2, plan.holdings().size());
        assertTrue(holdingOf(plan, 3) <= holdingOf(plan, 0), plan.toString());
    }

    /** Two forms at the clamped edge, each made in the holding with no later clamp on it. */
    @Test
    void noClampOfALaterHoldingStandsOnAForm() {
        Random random = new Random(11);
        int near = 0;
        for (int n = 0; n < CASES / 3; n++) {
            List<SheetHit> hits = new ArrayList<>();
            for (int i = 0; i < 3; i++) {
                hits.add(hit(i, FORM, 50 + random.nextInt(1700), 45, HitRole.FORM, i, i));
            }
            hits.add(hit(3, ROUND, 1750, 300, HitRole.PIERCE, 3, 3));
            hits.add(hit(4, ROUND, 50, 300, HitRole.PIERCE, 4, 4));
            HoldingPlan plan = HoldingPlanner.plan(job(1800, hits));
            int clamped = clamped(hits, plan);
            assertEquals(clamped, plan.findings().stream().filter(f -> f.reason() == HoldingReason.CLAMP_ON_FORM)
                    .map(Finding::subject).distinct().count(), "case " + n);
            near += clamped > 0 ? 1 : 0;
        }
        assertTrue(near <= CASES / 30, near + " of " + CASES / 3 + " sheets with a clamp on a form");
    }

    /** Forms on which a clamp of a later holding stands, from the plan's own figures. */
    private static int clamped(List<SheetHit> hits, HoldingPlan plan) {
        int clamped = 0;
        for (SheetHit h : hits) {
            boolean under = false;
            for (Holding later : plan.holdings()) {
                boolean edge = later.clamps().turned() ? 600 - h.at().y() < 60 : h.at().y() < 60;
                double x = later.clamps().turned() ? 1800 - h.at().x() : h.at().x();
                under |= later.index() > holdingOf(plan, h.id()) && edge
                        && later.clamps().clampCentersMm().stream().anyMatch(c -> Math.abs(c - x) < 50 - 1e-6);
            }
            clamped += under && h.role() == HitRole.FORM ? 1 : 0;
        }
        return clamped;
    }

    /** Seeded sheets of three positions: every way of dealing eight operations out to the positions is tried. */
    @Test
    void asFewFormsHurtAsInTheBestOfAllAssignments() {
        Random random = new Random(12);
        int hard = 0;
        int worse = 0;
        for (int n = 0; n < CASES; n++) {
            List<SheetHit> hits = crowd(random);
            Rig rig = new Rig(job(2600, hits));
            double[] clamps = {200, 700};
            List<Stand> stands = List.of(new Stand(0, 0), new Stand(0, 800), new Stand(0, 1600));
            Map<SheetHit, Integer> standOf = new HashMap<>();
            for (SheetHit h : hits) {
                List<Integer> can = serving(rig, clamps, stands, h);
                standOf.put(h, can.get(random.nextInt(can.size())));
            }
            int before = faults(hits, standOf);
            int least = best(rig, clamps, stands, hits, new HashMap<>(), 0);
            new FormStands(rig, clamps, stands, standOf).spare(new FormSpace(hits, 1));
            hard += before > least ? 1 : 0;
            worse += faults(hits, standOf) > least ? 1 : 0;
        }
        assertTrue(hard > CASES / 4, hard + " cases in which something has to move");
        assertTrue(worse <= CASES / 50, worse + " of " + CASES + " worse than the best");
    }

    private static List<Integer> serving(Rig rig, double[] clamps, List<Stand> stands, SheetHit h) {
        List<Integer> can = new ArrayList<>();
        for (int s = 0; s < stands.size(); s++) {
            if (rig.needOf.get(h).met(0, stands.get(s).zero(), clamps, rig.travelMm)) {
                can.add(s);
            }
        }
        return can;
    }

    /** Eight single hits about the stretches that two positions reach. */
    private static List<SheetHit> crowd(Random random) {
        List<SheetHit> hits = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            double x = List.of(785, 985, 1585, 1785).get(random.nextInt(4)) + random.nextInt(30);
            boolean form = random.nextInt(2) == 0;
            hits.add(hit(i, form ? FORM : ROUND, x, 300 + random.nextInt(30), form ? HitRole.FORM : HitRole.PIERCE, i, 0));
        }
        return hits;
    }

    private static int best(Rig rig, double[] clamps, List<Stand> stands, List<SheetHit> hits, Map<SheetHit, Integer> standOf,
            int from) {
        if (from == hits.size()) {
            return faults(hits, standOf);
        }
        int best = Integer.MAX_VALUE;
        for (int s : serving(rig, clamps, stands, hits.get(from))) {
            standOf.put(hits.get(from), s);
            best = Math.min(best, best(rig, clamps, stands, hits, standOf, from + 1));
        }
        return best;
    }

    /** Cuts within 15 mm of a form's edge in a later position, from circles alone; forms of one tool keep 4 t either way. */
    private static int faults(List<SheetHit> hits, Map<SheetHit, Integer> standOf) {
        int faults = 0;
        for (SheetHit f : hits) {
            for (SheetHit h : hits) {
                boolean near = h.use() == ROUND && h.at().distance(f.at()) < 10 + 5 + 15;
                faults += f.use() == FORM && near && standOf.get(h) > standOf.get(f) ? 1 : 0;
            }
        }
        return faults;
    }
}
