// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling.setup;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;

import punchwright.engine.tooling.setup.SetupProblem.Option;
import punchwright.engine.tooling.setup.SetupProblem.Solution;

/** Validation: exhaustive search on seeded small cases, without and with seats that are short. */
class SetupSolverTest {

    static SetupProblem random(Random random, int tasks, int options, int setups, boolean limited) {
        List<List<Option>> all = new ArrayList<>();
        for (int t = 0; t < tasks; t++) {
            List<Option> list = new ArrayList<>();
            int n = 1 + random.nextInt(options);
            for (int o = 0; o < n; o++) {
                int[] needs = random.ints(1 + random.nextInt(2), 0, setups).distinct().sorted().toArray();
                list.add(new Option(Math.rint(100 * random.nextDouble()) / 10, needs));
            }
            all.add(list);
        }
        double[] cost = random.doubles(setups, 0.5, 6).toArray();
        int[] limitOf = new int[setups];
        for (int s = 0; s < setups; s++) {
            limitOf[s] = limited ? s / 2 : -1;
        }
        int[] limits = new int[(setups + 1) / 2];
        for (int i = 0; i < limits.length; i++) {
            limits[i] = 1 + random.nextInt(2);
        }
        return new SetupProblem(all, cost, limitOf, limits);
    }

    private static double bruteForce(SetupProblem p, int[] choice, int task) {
        if (task == choice.length) {
            return cost(p, choice);
        }
        double best = Double.POSITIVE_INFINITY;
        for (int o = 0; o < p.tasks().get(task).size(); o++) {
            choice[task] = o;
            best = Math.min(best, bruteForce(p, choice, task + 1));
        }
        return best;
    }

    private static double cost(SetupProblem p, int[] choice) {
        boolean[] open = new boolean[p.setups()];
        double cost = 0;
        for (int t = 0; t < choice.length; t++) {
            Option o = p.tasks().get(t).get(choice[t]);
            cost += o.cost();
            for (int s : o.setups()) {
                open[s] = true;
            }
        }
        int[] used = new int[p.limits().length];
        for (int s = 0; s < open.length; s++) {
            cost += open[s] ? p.setupCost()[s] : 0;
            if (open[s] && p.limitOf()[s] >= 0 && ++used[p.limitOf()[s]] > p.limits()[p.limitOf()[s]]) {
                return Double.POSITIVE_INFINITY;
            }
        }
        return cost;
    }

    @Test
    void equalToExhaustiveSearchOnAThousandSmallCases() {
        Random random = new Random(4711);
        for (int i = 0; i < 1000; i++) {
            SetupProblem p = random(random, 2 + random.nextInt(5), 4, 3 + random.nextInt(4), i % 3 == 0);
            double best = bruteForce(p, new int[p.tasks().size()], 0);
            Solution s = SetupSolver.solve(p, 100_000);
            assertEquals(best, s.cost(), 1e-9, "case " + i);
            assertTrue(Double.isInfinite(best) || s.proven(), "case " + i);
            assertTrue(Double.isInfinite(best) || Math.abs(cost(p, s.choice()) - s.cost()) < 1e-9);
        }
    }

    @Test
    void boundNeverExceedsTheOptimum() {
        Random random = new Random(99);
        for (int i = 0; i < 300; i++) {
            SetupProblem p = random(random, 5, 4, 6, false);
            double best = bruteForce(p, new int[5], 0);
            assertTrue(SetupSolver.solve(p, 1).bound() <= best + 1e-9, "case " + i);
        }
    }

    /** Small seats: kinds with little room, and a carrier that takes one seat and gives several. */
    static SetupProblem seated(Random random, boolean limited) {
        SetupProblem p = random(random, 2 + random.nextInt(3), 3, 3 + random.nextInt(3), limited);
        double[][] cost = new double[p.setups()][4];
        for (double[] row : cost) {
            for (int k = 0; k < 4; k++) {
                row[k] = random.nextInt(3) == 0 ? Double.POSITIVE_INFINITY : Math.rint(80 * random.nextDouble()) / 10;
            }
        }
        Seating.Carrier carrier = new Seating.Carrier(3, 2, 1 + random.nextInt(2), Math.rint(30 * random.nextDouble()) / 10,
                random.nextBoolean() ? new int[] { 0 } : new int[] { 0, 1 });
        int[] room = { 1 + random.nextInt(2), random.nextInt(2), random.nextInt(2), 0 };
        return new SetupProblem(p.tasks(), p.setupCost(), p.limitOf(), p.limits(), new Seating(room, cost, List.of(carrier)));
    }

    /** Every choice with every seat and every use of the carrier. */
    private static double everything(SetupProblem p, int[] choice, int task) {
        if (task < choice.length) {
            double best = Double.POSITIVE_INFINITY;
            for (int o = 0; o < p.tasks().get(task).size(); o++) {
                choice[task] = o;
                best = Math.min(best, everything(p, choice, task + 1));
            }
            return best;
        }
        double cost = cost(p, choice);
        List<Integer> used = new ArrayList<>();
        for (int t = 0; t < choice.length; t++) {
            for (int s : p.tasks().get(t).get(choice[t]).setups()) {
                if (!used.contains(s)) {
                    used.add(s);
                }
            }
        }
        return Double.isInfinite(cost) ? cost : cost + carriers(p.seating(), used, p.seating().room().clone(), 0, 0);
    }

    private static double carriers(Seating seating, List<Integer> used, int[] free, int carriers, int from) {
        Seating.Carrier c = seating.carriers().getFirst();
        double best = seats(seating, used, free, 0);
        for (int i = from; i < c.in().length && carriers < c.most(); i++) {
            if (free[c.in()[i]] > 0) {
                free[c.in()[i]]--;
                free[c.kind()] += c.seats();
                best = Math.min(best, c.cost() + carriers(seating, used, free, carriers + 1, i));
                free[c.in()[i]]++;
                free[c.kind()] -= c.seats();
            }
        }
        return best;
    }

    private static double seats(Seating seating, List<Integer> used, int[] free, int i) {
        if (i == used.size()) {
            return 0;
        }
        double best = Double.POSITIVE_INFINITY;
        for (int k = 0; k < free.length; k++) {
            if (free[k] > 0) {
                free[k]--;
                best = Math.min(best, seating.cost()[used.get(i)][k] + seats(seating, used, free, i + 1));
                free[k]++;
            }
        }
        return best;
    }

    @Test
    void withSeatsEqualToExhaustiveSearchOnAThousandSmallCases() {
        Random random = new Random(815);
        int impossible = 0;
        for (int i = 0; i < 1000; i++) {
            SetupProblem p = seated(random, i % 3 == 0);
            double best = everything(p, new int[p.tasks().size()], 0);
            Solution s = SetupSolver.solve(p, 10_000);
            assertEquals(best, s.cost(), 1e-9, "case " + i);
            assertTrue(Double.isInfinite(best) || s.proven(), "case " + i + " bound " + s.bound() + " cost " + s.cost());
            impossible += Double.isInfinite(best) ? 1 : 0;
        }
        assertTrue(impossible > 20 && impossible < 700, impossible + " cases without any way");
    }

    @Test
    void theSameProblemHasTheSameChoice() {
        SetupProblem p = random(new Random(5), 25, 6, 40, true);
        assertArrayEquals(SetupSolver.solve(p, 500).choice(), SetupSolver.solve(p, 500).choice());
    }
}
