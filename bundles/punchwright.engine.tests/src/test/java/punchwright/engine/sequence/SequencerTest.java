// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.sequence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

import org.junit.jupiter.api.Test;

import punchwright.engine.geometry.Point;
import punchwright.engine.holding.Holding;
import punchwright.engine.holding.HoldingPlan;
import punchwright.engine.holding.SheetHit;
import punchwright.engine.tooling.HitRole;
import punchwright.engine.tooling.ToolShape;
import punchwright.engine.tooling.ToolUse;

/** Rules that every order must keep, and the travel against all orders on small cases. */
class SequencerTest {

    private static final ToolUse SMALL = Shop.use(1, Shop.tool("R6", ToolShape.ROUND, 6, 6), Shop.P2);
    private static final ToolUse LARGE = Shop.use(2, Shop.tool("R30", ToolShape.ROUND, 30, 30), Shop.P3);
    private static final ToolUse SLIT = Shop.use(3, Shop.tool("S50x5", ToolShape.RECTANGLE, 50, 5), Shop.P1);
    private static final ToolUse FORM = Shop.use(4, Shop.tool("L", ToolShape.LOUVRE, 40, 10), null);

    @Test
    void openingsThenFormsThenSeparation() {
        List<SheetHit> hits = List.of(Shop.hit(0, SLIT, 900, 500, HitRole.SLIT), Shop.hit(1, FORM, 100, 100, HitRole.FORM),
                Shop.hit(2, LARGE, 300, 300, HitRole.PIERCE), Shop.hit(3, SMALL, 200, 200, HitRole.PIERCE));
        assertEquals(List.of(3, 2, 1, 0), ids(Sequencer.order(Shop.job(hits))));
    }

    /** A round plate: rim nibbled from outside, an opening nibbled inside by the same tool; the rim comes last. */
    @Test
    void nibbledOutlineComesAfterWhatItHolds() {
        List<SheetHit> hits = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            hits.add(new SheetHit(i, SMALL, new Point(300, 300).plus(Point.polar(100, Math.toRadians(6 * i))), 0,
                    HitRole.NIBBLE, 1, 0));
        }
        for (int i = 0; i < 20; i++) {
            hits.add(new SheetHit(60 + i, SMALL, new Point(300, 300).plus(Point.polar(20, Math.toRadians(18 * i))), 0,
                    HitRole.NIBBLE, 2, 0));
        }
        List<Integer> order = ids(Sequencer.order(Shop.job(hits)));
        assertTrue(order.subList(0, 20).stream().allMatch(id -> id >= 60), order.toString());
    }

    /** In 2 mm the room kept clear is 3 t = 6 mm: the slit 5 mm beside the louvre comes first, the one 7 mm beside it last. */
    @Test
    void slitBesideAFormComesBeforeIt() {
        List<SheetHit> hits = List.of(Shop.hit(0, SLIT, 100, 500, HitRole.SLIT), Shop.hit(1, FORM, 100, 100, HitRole.FORM),
                Shop.hit(2, SLIT, 100, 112.5, HitRole.SLIT), Shop.hit(3, SLIT, 100, 85.5, HitRole.SLIT));
        List<Integer> order = ids(Sequencer.order(Shop.job(hits, 2)));
        assertEquals(List.of(2, 1), order.subList(0, 2));
        assertEquals(Set.of(0, 3), Set.copyOf(order.subList(2, 4)));
    }

    @Test
    void cutAfterAFormInALaterHoldingIsAWarning() {
        List<SheetHit> hits = List.of(Shop.hit(0, FORM, 100, 100, HitRole.FORM), Shop.hit(1, SLIT, 100, 112, HitRole.SLIT),
                Shop.hit(2, SMALL, 600, 500, HitRole.PIERCE));
        HoldingPlan plan = new HoldingPlan(List.of(new Holding(0, Shop.clamps(false), List.of(0, 2)),
                new Holding(1, Shop.clamps(false), List.of(1))), List.of());
        Sequence s = Sequencer.order(new SequenceJob(Shop.machine(), hits, plan, 1000, 1, 2));
        assertEquals("SEQUENCE-CUT-AFTER-FORM", s.findings().getFirst().code());
        String message = s.findings().getFirst().message();
        assertTrue(message.contains("4.5 mm") && message.contains("6.0 mm are the least") && message.contains("holding 2"), message);
        String german = s.findings().getFirst().message(Locale.GERMAN);
        assertTrue(german.contains("4,5 mm") && german.contains("mindestens 6,0 mm"), german);
        assertEquals(new Point(100, 112), s.findings().getFirst().place());
        assertEquals(List.of(), Sequencer.order(new SequenceJob(Shop.machine(), hits, plan, 1000, 1, 1.5)).findings());
    }

    @Test
    void hitWithoutHoldingIsAnError() {
        List<SheetHit> hits = List.of(Shop.hit(7, SMALL, 0, 0, HitRole.PIERCE));
        Sequence s = Sequencer.order(new SequenceJob(Shop.machine(), hits, Shop.oneHolding(List.of()), 1000, 1));
        assertTrue(s.findings().getFirst().isError());
        assertTrue(s.findings().getFirst().message().contains("7"));
    }

    @Test
    void runsStayTogetherInEitherDirection() {
        List<SheetHit> hits = new ArrayList<>();
        for (int run = 0; run < 12; run++) {
            for (int i = 0; i < 9; i++) {
                hits.add(new SheetHit(hits.size(), SLIT, new Point(run * 37 % 500 + 3 * i, run * 91 % 700), 0, HitRole.SLIT, run,
                        0));
            }
        }
        List<Integer> order = ids(Sequencer.order(Shop.job(hits)));
        assertEquals(hits.size(), new HashSet<>(order).size());
        for (int start = 0; start < order.size(); start += 9) {
            int way = order.get(start + 1) - order.get(start);
            assertEquals(1, Math.abs(way));
            for (int i = 1; i < 9; i++) {
                assertEquals(order.get(start) + way * i, order.get(start + i));
            }
        }
    }

    @Test
    void theNextHoldingGoesOnWithTheToolAtHand() {
        List<SheetHit> hits = List.of(Shop.hit(0, SMALL, 0, 0, HitRole.PIERCE), Shop.hit(1, LARGE, 10, 0, HitRole.PIERCE),
                Shop.hit(2, SMALL, 20, 0, HitRole.PIERCE), Shop.hit(3, LARGE, 30, 0, HitRole.PIERCE));
        HoldingPlan plan = new HoldingPlan(List.of(new Holding(0, Shop.clamps(false), List.of(0, 1)),
                new Holding(1, Shop.clamps(false), List.of(2, 3))), List.of());
        assertEquals(List.of(0, 1, 3, 2), ids(Sequencer.order(new SequenceJob(Shop.machine(), hits, plan, 1000, 1))));
    }

    @Test
    void addedRuleHolds() {
        List<SheetHit> hits = List.of(Shop.hit(0, SMALL, 0, 0, HitRole.PIERCE), Shop.hit(1, LARGE, 10, 0, HitRole.PIERCE));
        List<PrecedenceRule> rules = new ArrayList<>(PrecedenceRules.USUAL);
        rules.add(PrecedenceRule.tools("R30", "R6", "The small hole sits at the rim of the large one."));
        assertEquals(List.of(1, 0), ids(Sequencer.order(Shop.job(hits), rules)));
    }

    @Test
    void contradictingRulesAreNamed() {
        List<SheetHit> hits = List.of(Shop.hit(0, SMALL, 0, 0, HitRole.PIERCE), Shop.hit(1, LARGE, 10, 0, HitRole.PIERCE));
        List<PrecedenceRule> rules = List.of(PrecedenceRule.tools("R30", "R6", "one"), PrecedenceRule.tools("R6", "R30", "two"));
        Sequence s = Sequencer.order(Shop.job(hits), rules);
        assertEquals(2, s.hits().size());
        assertEquals("SEQUENCE-RULES-CIRCULAR", s.findings().getFirst().code());
        assertTrue(s.findings().getFirst().message().endsWith("One says: one"), s.findings().getFirst().message());
    }

    /** All orders of six tools in places, in a multi-tool and by hand are tried; none needs less time for changes. */
    @Test
    void changesAreTheLeastOfAllOrders() {
        List<ToolUse> tools = List.of(SMALL, LARGE, FORM, Shop.insert(5, Shop.tool("R4", ToolShape.ROUND, 4, 4), 1),
                Shop.insert(6, Shop.tool("R12", ToolShape.ROUND, 12, 12), 2),
                Shop.use(7, Shop.tool("Q50", ToolShape.SQUARE, 50, 50), null));
        RunMetric metric = new RunMetric(Shop.machine());
        for (int seed = 0; seed < 20; seed++) {
            java.util.Random random = new java.util.Random(seed);
            List<SheetHit> hits = new ArrayList<>();
            for (ToolUse t : tools) {
                if (random.nextInt(4) > 0) {
                    hits.add(Shop.hit(hits.size(), t, 0, 0, HitRole.PIERCE));
                }
            }
            List<SheetHit> ours = Sequencer.order(Shop.job(hits)).hits().stream().map(SequencedHit::hit).toList();
            assertEquals(best(new ArrayList<>(hits), 0, metric), length(ours, metric), 1e-9, "seed " + seed);
        }
    }

    /** All orders and directions of five nibbled runs are tried. */
    @Test
    void runsAreAsShortAsTheBestOfAllOrders() {
        RunMetric metric = new RunMetric(Shop.machine());
        for (int seed = 0; seed < 20; seed++) {
            java.util.Random random = new java.util.Random(seed);
            List<List<SheetHit>> runs = new ArrayList<>();
            for (int r = 0; r < 5; r++) {
                Point from = new Point(random.nextInt(800), random.nextInt(500));
                Point step = Point.polar(6, random.nextDouble() * 6);
                List<SheetHit> run = new ArrayList<>();
                for (int i = 0; i < 20; i++) {
                    run.add(new SheetHit(20 * r + i, SLIT, from.plus(step.times(i)), 0, HitRole.SLIT, r, 0));
                }
                runs.add(run);
            }
            List<SheetHit> hits = runs.stream().flatMap(List::stream).toList();
            List<SheetHit> ours = Sequencer.order(Shop.job(hits)).hits().stream().map(SequencedHit::hit).toList();
            assertEquals(bestRuns(runs, 0, metric), length(ours, metric), 1e-9, "seed " + seed);
        }
    }

    private static double bestRuns(List<List<SheetHit>> runs, int from, RunMetric metric) {
        if (from == runs.size()) {
            return length(runs.stream().flatMap(List::stream).toList(), metric);
        }
        double best = Double.POSITIVE_INFINITY;
        for (int i = from; i < runs.size(); i++) {
            java.util.Collections.swap(runs, from, i);
            for (int way = 0; way < 2; way++) {
                runs.set(from, runs.get(from).reversed());
                best = Math.min(best, bestRuns(runs, from + 1, metric));
            }
            java.util.Collections.swap(runs, from, i);
        }
        return best;
    }

    /** All orders of seven hits are tried under the machine's metric. */
    @Test
    void smallCasesAreAsShortAsTheBestOfAllOrders() {
        RunMetric metric = new RunMetric(Shop.machine());
        for (int seed = 0; seed < 30; seed++) {
            List<SheetHit> hits = Shop.scattered(7, seed, LARGE);
            double ours = length(Sequencer.order(Shop.job(hits)).hits().stream().map(SequencedHit::hit).toList(), metric);
            double best = best(new ArrayList<>(hits), 0, metric);
            assertEquals(best, ours, 1e-9, "seed " + seed);
        }
    }

    @Test
    void sameInputSameOrder() {
        List<SheetHit> hits = Shop.scattered(300, 3, LARGE);
        assertEquals(ids(Sequencer.order(Shop.job(hits))), ids(Sequencer.order(Shop.job(hits))));
    }

    private static double best(List<SheetHit> hits, int from, RunMetric metric) {
        if (from == hits.size()) {
            return length(hits, metric);
        }
        double best = Double.POSITIVE_INFINITY;
        for (int i = from; i < hits.size(); i++) {
            java.util.Collections.swap(hits, from, i);
            best = Math.min(best, best(hits, from + 1, metric));
            java.util.Collections.swap(hits, from, i);
        }
        return best;
    }

    private static double length(List<SheetHit> hits, RunMetric metric) {
        double sum = 0;
        for (int i = 1; i < hits.size(); i++) {
            sum += metric.seconds(hits.get(i - 1), hits.get(i));
        }
        return sum;
    }

    private static List<Integer> ids(Sequence s) {
        return s.hits().stream().map(h -> h.hit().id()).toList();
    }
}
