// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;

import punchwright.engine.tooling.SetupProblem.Option;
import punchwright.engine.tooling.SetupProblem.Solution;

/** Validation: exhaustive search on seeded small cases; proof on larger ones. */
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

    @Test
    void sixtyTasksAndThreeHundredSetupsAreProven() {
        int proven = 0;
        for (int seed = 1; seed <= 20; seed++) {
            SetupProblem p = random(new Random(seed), 60, 12, 300, false);
            Solution s = SetupSolver.solve(p, 4000);
            proven += s.proven() ? 1 : 0;
            assertTrue(s.cost() - s.bound() <= 0.02 * s.cost(), seed + " " + s.cost() + " " + s.bound());
        }
        assertTrue(proven >= 19, proven + " of 20");
    }
}
