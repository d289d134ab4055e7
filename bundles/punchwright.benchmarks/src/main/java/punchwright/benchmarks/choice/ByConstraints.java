// SPDX-License-Identifier: EPL-2.0
package punchwright.benchmarks.choice;

import com.google.ortools.Loader;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.ArrayList;
import java.util.List;
import punchwright.engine.tooling.setup.Seating;
import punchwright.engine.tooling.setup.SetupProblem;
import punchwright.engine.tooling.setup.SetupProblem.Option;
import punchwright.engine.tooling.setup.SetupProblem.Solution;

/** The same problem by OR-Tools CP-SAT: costs in thousandths, one worker, work limited by its own deterministic time. */
final class ByConstraints implements Contender {

    private static final double SCALE = 1000;

    @Override
    public String name() {
        return "OR-Tools CP-SAT 9.15";
    }

    @Override
    public Solution solve(SetupProblem p, double work) {
        Loader.loadNativeLibraries();
        CpModel model = new CpModel();
        LinearExprBuilder goal = LinearExpr.newBuilder();
        BoolVar[] open = new BoolVar[p.setups()];
        for (int s = 0; s < open.length; s++) {
            open[s] = model.newBoolVar("");
            goal.addTerm(open[s], Math.round(SCALE * p.setupCost()[s]));
        }
        BoolVar[][] takes = tasks(p, model, open, goal);
        limits(p, model, open);
        if (p.seating() != null) {
            seats(p.seating(), model, open, goal);
        }
        model.minimize(goal);
        CpSolver solver = new CpSolver();
        solver.getParameters().setNumWorkers(1).setRandomSeed(1).setMaxDeterministicTime(work);
        CpSolverStatus status = solver.solve(model);
        boolean found = status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE;
        int[] choice = new int[takes.length];
        for (int t = 0; found && t < choice.length; t++) {
            for (int o = 0; o < takes[t].length; o++) {
                choice[t] = solver.booleanValue(takes[t][o]) ? o : choice[t];
            }
        }
        double cost = found ? solver.objectiveValue() / SCALE : Double.POSITIVE_INFINITY;
        double bound = status == CpSolverStatus.OPTIMAL ? cost : solver.bestObjectiveBound() / SCALE;
        return new Solution(choice, cost, bound, (int) solver.numBranches());
    }

    private static BoolVar[][] tasks(SetupProblem p, CpModel model, BoolVar[] open, LinearExprBuilder goal) {
        BoolVar[][] takes = new BoolVar[p.tasks().size()][];
        for (int t = 0; t < takes.length; t++) {
            List<Option> options = p.tasks().get(t);
            takes[t] = new BoolVar[options.size()];
            List<List<BoolVar>> users = new ArrayList<>();
            for (int s = 0; s < open.length; s++) {
                users.add(null);
            }
            for (int o = 0; o < options.size(); o++) {
                takes[t][o] = model.newBoolVar("");
                goal.addTerm(takes[t][o], Math.round(SCALE * options.get(o).cost()));
                for (int s : options.get(o).setups()) {
                    if (users.get(s) == null) {
                        users.set(s, new ArrayList<>());
                    }
                    users.get(s).add(takes[t][o]);
                }
            }
            model.addExactlyOne(takes[t]);
            for (int s = 0; s < open.length; s++) {
                if (users.get(s) != null) {
                    model.addLessOrEqual(LinearExpr.sum(users.get(s).toArray(BoolVar[]::new)), open[s]);
                }
            }
        }
        return takes;
    }

    private static void limits(SetupProblem p, CpModel model, BoolVar[] open) {
        for (int l = 0; l < p.limits().length; l++) {
            LinearExprBuilder sum = LinearExpr.newBuilder();
            for (int s = 0; s < open.length; s++) {
                if (p.limitOf()[s] == l) {
                    sum.addTerm(open[s], 1);
                }
            }
            model.addLessOrEqual(sum, p.limits()[l]);
        }
    }

    private static void seats(Seating seating, CpModel model, BoolVar[] open, LinearExprBuilder goal) {
        LinearExprBuilder[] used = new LinearExprBuilder[seating.kinds()];
        for (int k = 0; k < used.length; k++) {
            used[k] = LinearExpr.newBuilder();
        }
        for (int s = 0; s < open.length; s++) {
            LinearExprBuilder where = LinearExpr.newBuilder();
            for (int k = 0; k < used.length; k++) {
                if (Double.isFinite(seating.cost()[s][k])) {
                    BoolVar sits = model.newBoolVar("");
                    where.addTerm(sits, 1);
                    used[k].addTerm(sits, 1);
                    goal.addTerm(sits, Math.round(SCALE * seating.cost()[s][k]));
                }
            }
            model.addEquality(where, open[s]);
        }
        for (Seating.Carrier c : seating.carriers()) {
            LinearExprBuilder all = LinearExpr.newBuilder();
            for (int k : c.in()) {
                IntVar here = model.newIntVar(0, c.most(), "");
                all.addTerm(here, 1);
                used[k].addTerm(here, 1);
                used[c.kind()].addTerm(here, -c.seats());
                goal.addTerm(here, Math.round(SCALE * c.cost()));
            }
            model.addLessOrEqual(all, c.most());
        }
        for (int k = 0; k < used.length; k++) {
            model.addLessOrEqual(used[k], seating.room()[k]);
        }
    }
}
