// SPDX-License-Identifier: EPL-2.0
package punchwright.benchmarks.choice;

import java.util.ArrayList;
import java.util.List;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.Solution;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;
import punchwright.engine.tooling.setup.Seating;
import punchwright.engine.tooling.setup.SetupProblem;
import punchwright.engine.tooling.setup.SetupProblem.Option;

/** The same problem by Choco: costs rounded to what its whole numbers hold, work limited by nodes. */
final class ByPropagation implements Contender {

    /** Its whole numbers end at 21 million, which the sum of all costs must not pass. */
    private static final double MOST = 2e7;
    private static final long NODES_A_UNIT = 2000;

    private final List<IntVar> terms = new ArrayList<>();
    private final List<Integer> weights = new ArrayList<>();
    private double scale;

    @Override
    public String name() {
        return "Choco 5.0";
    }

    @Override
    public SetupProblem.Solution solve(SetupProblem p, double work) {
        Model model = new Model();
        scale = Math.min(10, MOST / total(p));
        terms.clear();
        weights.clear();
        BoolVar[] open = model.boolVarArray(p.setups());
        for (int s = 0; s < open.length; s++) {
            term(open[s], p.setupCost()[s]);
        }
        BoolVar[][] takes = new BoolVar[p.tasks().size()][];
        for (int t = 0; t < takes.length; t++) {
            List<Option> options = p.tasks().get(t);
            takes[t] = model.boolVarArray(options.size());
            model.sum(takes[t], "=", 1).post();
            for (int o = 0; o < takes[t].length; o++) {
                term(takes[t][o], options.get(o).cost());
                for (int s : options.get(o).setups()) {
                    model.arithm(takes[t][o], "<=", open[s]).post();
                }
            }
        }
        limits(p, model, open);
        if (p.seating() != null) {
            seats(p.seating(), model, open);
        }
        IntVar cost = model.intVar("cost", 0, (int) MOST, true);
        model.scalar(terms.toArray(IntVar[]::new), weights.stream().mapToInt(Integer::intValue).toArray(), "=", cost).post();
        model.getSolver().limitNode((long) (NODES_A_UNIT * work));
        Solution best = model.getSolver().findOptimalSolution(cost, Model.MINIMIZE);
        return answer(takes, best, cost, !model.getSolver().isStopCriterionMet());
    }

    private SetupProblem.Solution answer(BoolVar[][] takes, Solution best, IntVar cost, boolean proven) {
        int[] choice = new int[takes.length];
        if (best == null) {
            return new SetupProblem.Solution(choice, Double.POSITIVE_INFINITY, proven ? Double.POSITIVE_INFINITY : 0, 0);
        }
        for (int t = 0; t < choice.length; t++) {
            for (int o = 0; o < takes[t].length; o++) {
                choice[t] = best.getIntVal(takes[t][o]) == 1 ? o : choice[t];
            }
        }
        double value = best.getIntVal(cost) / scale;
        return new SetupProblem.Solution(choice, value, proven ? value : 0, 0);
    }

    private static double total(SetupProblem p) {
        double sum = java.util.Arrays.stream(p.setupCost()).sum();
        sum += p.tasks().stream().flatMap(List::stream).mapToDouble(Option::cost).sum();
        if (p.seating() != null) {
            for (double[] row : p.seating().cost()) {
                sum += java.util.Arrays.stream(row).filter(Double::isFinite).sum();
            }
            sum += p.seating().carriers().stream().mapToDouble(c -> c.cost() * c.most() * c.in().length).sum();
        }
        return Math.max(1, sum);
    }

    private void term(IntVar v, double cost) {
        terms.add(v);
        weights.add((int) Math.round(scale * cost));
    }

    private static void limits(SetupProblem p, Model model, BoolVar[] open) {
        for (int l = 0; l < p.limits().length; l++) {
            List<BoolVar> sum = new ArrayList<>();
            for (int s = 0; s < open.length; s++) {
                if (p.limitOf()[s] == l) {
                    sum.add(open[s]);
                }
            }
            if (sum.size() > p.limits()[l]) {
                model.sum(sum.toArray(BoolVar[]::new), "<=", p.limits()[l]).post();
            }
        }
    }

    private void seats(Seating seating, Model model, BoolVar[] open) {
        List<List<IntVar>> used = new ArrayList<>();
        List<List<Integer>> by = new ArrayList<>();
        for (int k = 0; k < seating.kinds(); k++) {
            used.add(new ArrayList<>());
            by.add(new ArrayList<>());
        }
        for (int s = 0; s < open.length; s++) {
            List<BoolVar> where = new ArrayList<>();
            for (int k = 0; k < seating.kinds(); k++) {
                if (Double.isFinite(seating.cost()[s][k])) {
                    BoolVar sits = model.boolVar();
                    where.add(sits);
                    used.get(k).add(sits);
                    by.get(k).add(1);
                    term(sits, seating.cost()[s][k]);
                }
            }
            model.sum(where.toArray(BoolVar[]::new), "=", open[s]).post();
        }
        for (Seating.Carrier c : seating.carriers()) {
            List<IntVar> all = new ArrayList<>();
            for (int k : c.in()) {
                IntVar here = model.intVar(0, c.most());
                all.add(here);
                used.get(k).add(here);
                by.get(k).add(1);
                used.get(c.kind()).add(here);
                by.get(c.kind()).add(-c.seats());
                term(here, c.cost());
            }
            model.sum(all.toArray(IntVar[]::new), "<=", c.most()).post();
        }
        for (int k = 0; k < used.size(); k++) {
            model.scalar(used.get(k).toArray(IntVar[]::new), by.get(k).stream().mapToInt(Integer::intValue).toArray(), "<=",
                    seating.room()[k]).post();
        }
    }
}
