// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting.bars;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

import punchwright.engine.nesting.boxes.Work;

/** Validation: bars against published optima and against an exhaustive search written here. */
class BarSearchTest {

    private static final int PLENTY = 10_000;

    private static BarProblem oneKind(int capacity, int[] lengths, int[] demand) {
        return new BarProblem(List.of(new BarKind(capacity, lengths, 1, 0, 0)), new int[] {PLENTY}, demand);
    }

    /** Pieces as asked, lengths and stock kept, cost added up again. */
    private static void check(BarProblem problem, BarPlan plan) {
        int[] made = new int[problem.demand().length];
        int[] used = new int[problem.onHand().length];
        double cost = 0;
        for (var e : plan.runs().entrySet()) {
            BarKind kind = problem.kinds().get(e.getKey().kind());
            long length = 0;
            for (int j = 0; j < made.length; j++) {
                made[j] += e.getValue() * e.getKey().counts()[j];
                length += (long) e.getKey().counts()[j] * kind.lengths()[j];
                assertTrue(e.getKey().counts()[j] == 0 || kind.lengths()[j] > 0, "part on a bar that it does not fit");
            }
            assertTrue(length <= kind.capacity(), "bar too short");
            used[kind.stock()] += e.getValue();
            cost += e.getValue() * (kind.cost() + kind.costPerUnit() * length);
        }
        assertEquals(Arrays.toString(problem.demand()), Arrays.toString(made));
        for (int s = 0; s < used.length; s++) {
            assertTrue(used[s] <= problem.onHand()[s], "stock " + s);
        }
        assertEquals(cost, plan.cost(), 1e-6);
        assertTrue(plan.bound() <= plan.cost() + 1e-9);
    }

    /** Wikipedia, "Cutting stock problem": paper rolls of 5600 mm, thirteen widths; the optimum is 73 rolls. */
    @Test
    @DisplayName("published: 13 widths from rolls of 5600 mm take 73 rolls")
    void rollsOfPaper() {
        int[] widths = {1380, 1520, 1560, 1710, 1820, 1880, 1930, 2000, 2050, 2100, 2140, 2150, 2200};
        int[] demand = {22, 25, 12, 14, 18, 18, 20, 10, 12, 14, 16, 18, 20};
        BarProblem problem = oneKind(5600, widths, demand);
        BarPlan plan = BarSearch.solve(problem, new Work(10_000_000));
        check(problem, plan);
        assertEquals(73, plan.cost(), 1e-9);
        assertTrue(plan.proven());
    }

    /** Chvatal, Linear Programming, Freeman 1983, chapter 13: the linear program takes 452.25 raws, so 453 (from memory). */
    @Test
    @DisplayName("published: 97 x 45, 610 x 36, 395 x 31, 211 x 14 inches from raws of 100 inches take 453")
    void rawsOfHundredInches() {
        BarProblem problem = oneKind(100, new int[] {45, 36, 31, 14}, new int[] {97, 610, 395, 211});
        BarPlan plan = BarSearch.solve(problem, new Work(10_000_000));
        check(problem, plan);
        assertEquals(453, plan.cost(), 1e-9);
        assertTrue(plan.proven());
    }

    @Test
    @DisplayName("small cases with several bars, costs and quantities on hand: equal to an exhaustive search")
    void equalToExhaustiveSearch() {
        int proven = 0;
        int some = 0;
        for (int seed = 1; seed <= 40; seed++) {
            BarProblem problem = small(new SplittableRandom(seed));
            BarPlan plan = BarSearch.solve(problem, new Work(10_000_000));
            double least = new Exhaustive(problem).least();
            if (plan == null) {
                assertEquals(Double.POSITIVE_INFINITY, least, "seed " + seed);
                continue;
            }
            check(problem, plan);
            assertTrue(plan.bound() <= least + 1e-6, "seed " + seed + ": bound " + plan.bound() + " above " + least);
            some++;
            if (plan.proven()) {
                proven++;
                assertEquals(least, plan.cost(), 1e-6, "seed " + seed);
            }
        }
        assertTrue(proven >= 0.95 * some, proven + " of " + some + " proven");
    }

    private static BarProblem small(SplittableRandom r) {
        int parts = 2 + r.nextInt(3);
        int[] lengths = r.ints(parts, 15, 70).toArray();
        int[] demand = r.ints(parts, 1, 6).toArray();
        List<BarKind> kinds = new ArrayList<>();
        int stocks = 1 + r.nextInt(3);
        int[] onHand = new int[stocks];
        for (int s = 0; s < stocks; s++) {
            kinds.add(new BarKind(r.nextInt(60, 131), lengths, r.nextInt(40, 101) / 10.0, 0, s));
            onHand[s] = r.nextInt(3) == 0 ? r.nextInt(1, 4) : PLENTY;
        }
        return new BarProblem(kinds, onHand, demand);
    }

    /** Kept rests: a bar of 100 at 10; half its price back for a rest of 40 or more. Two parts of 50: 10 on one bar, not 15. */
    @Test
    void restsThatAreKeptCountOnlyWhenLongEnough() {
        int[] lengths = {50};
        BarProblem problem = new BarProblem(List.of(new BarKind(100, lengths, 10, 0, 0), new BarKind(60, lengths, 5, 0.05, 0)),
                new int[] {PLENTY}, new int[] {2});
        BarPlan two = BarSearch.solve(problem, new Work(1_000_000));
        assertEquals(10, two.cost(), 1e-9);
        BarPlan three = BarSearch.solve(new BarProblem(problem.kinds(), problem.onHand(), new int[] {3}), new Work(1_000_000));
        assertEquals(17.5, three.cost(), 1e-9);
    }

    @Test
    void tooFewBarsGiveNoPlan() {
        assertNull(BarSearch.solve(new BarProblem(List.of(new BarKind(100, new int[] {60}, 1, 0, 0)), new int[] {2},
                new int[] {3}), new Work(1_000_000)));
        assertNull(BarSearch.solve(oneKind(100, new int[] {101}, new int[] {1}), new Work(1_000_000)));
    }

    /** Least cost for what is left, by trying every pattern of every bar for the first missing piece. */
    private static final class Exhaustive {

        private final BarProblem problem;
        private final Map<List<Integer>, Double> known = new HashMap<>();

        Exhaustive(BarProblem problem) {
            this.problem = problem;
        }

        double least() {
            return least(problem.demand().clone(), problem.onHand().clone());
        }

        private double least(int[] left, int[] onHand) {
            int first = IntStream.range(0, left.length).filter(j -> left[j] > 0).findFirst().orElse(-1);
            if (first < 0) {
                return 0;
            }
            List<Integer> key = IntStream.concat(Arrays.stream(left), Arrays.stream(onHand)).boxed().toList();
            Double found = known.get(key);
            if (found != null) {
                return found;
            }
            double best = Double.POSITIVE_INFINITY;
            for (BarKind kind : problem.kinds()) {
                if (onHand[kind.stock()] > 0 && kind.lengths()[first] <= kind.capacity()) {
                    onHand[kind.stock()]--;
                    left[first]--;
                    best = Math.min(best, kind.cost() + fill(kind, kind.capacity() - kind.lengths()[first], 0, left, onHand));
                    left[first]++;
                    onHand[kind.stock()]++;
                }
            }
            known.put(key, best);
            return best;
        }

        private double fill(BarKind kind, int room, int from, int[] left, int[] onHand) {
            double best = least(left, onHand);
            for (int j = from; j < left.length; j++) {
                if (left[j] > 0 && kind.lengths()[j] <= room) {
                    left[j]--;
                    best = Math.min(best, fill(kind, room - kind.lengths()[j], j, left, onHand));
                    left[j]++;
                }
            }
            return best;
        }
    }
}
