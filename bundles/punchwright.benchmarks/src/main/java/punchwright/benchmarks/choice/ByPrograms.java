// SPDX-License-Identifier: EPL-2.0
package punchwright.benchmarks.choice;

import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;
import org.ojalgo.optimisation.integer.IntegerStrategy;
import org.ojalgo.type.CalendarDateUnit;
import punchwright.engine.tooling.setup.Seating;
import punchwright.engine.tooling.setup.SetupProblem;
import punchwright.engine.tooling.setup.SetupProblem.Option;
import punchwright.engine.tooling.setup.SetupProblem.Solution;

/** The same problem as an integer program by ojAlgo, one worker. */
final class ByPrograms implements Contender {

    @Override
    public String name() {
        return "ojAlgo 57.1";
    }

    @Override
    public Solution solve(SetupProblem p, double work) {
        ExpressionsBasedModel model = new ExpressionsBasedModel();
        model.options.integer(IntegerStrategy.DEFAULT.withParallelism(() -> 1));
        model.options.time_abort = (long) (1000 * work);
        model.options.time_suffice = (long) (1000 * work);
        Variable[] open = new Variable[p.setups()];
        for (int s = 0; s < open.length; s++) {
            open[s] = model.newVariable("y" + s).binary().weight(p.setupCost()[s]);
        }
        Variable[][] takes = new Variable[p.tasks().size()][];
        for (int t = 0; t < takes.length; t++) {
            var options = p.tasks().get(t);
            takes[t] = new Variable[options.size()];
            Expression one = model.newExpression("one" + t).level(1);
            Expression[] users = new Expression[open.length];
            for (int o = 0; o < takes[t].length; o++) {
                takes[t][o] = model.newVariable("x" + t + "_" + o).binary().weight(options.get(o).cost());
                one.set(takes[t][o], 1);
                for (int s : options.get(o).setups()) {
                    if (users[s] == null) {
                        users[s] = model.newExpression("use" + t + "_" + s).upper(0).set(open[s], -1);
                    }
                    users[s].set(takes[t][o], 1);
                }
            }
        }
        for (int l = 0; l < p.limits().length; l++) {
            Expression sum = model.newExpression("limit" + l).upper(p.limits()[l]);
            for (int s = 0; s < open.length; s++) {
                if (p.limitOf()[s] == l) {
                    sum.set(open[s], 1);
                }
            }
        }
        if (p.seating() != null) {
            seats(p.seating(), model, open);
        }
        Optimisation.Result r = model.minimise();
        int[] choice = new int[takes.length];
        for (int t = 0; t < choice.length; t++) {
            for (int o = 0; o < takes[t].length; o++) {
                choice[t] = r.getState().isFeasible() && r.doubleValue(model.indexOf(takes[t][o])) > 0.5 ? o : choice[t];
            }
        }
        double cost = r.getState().isFeasible() ? r.getValue() : Double.POSITIVE_INFINITY;
        return new Solution(choice, cost, r.getState().isOptimal() ? cost : 0, 0);
    }

    private static void seats(Seating seating, ExpressionsBasedModel model, Variable[] open) {
        Expression[] used = new Expression[seating.kinds()];
        for (int k = 0; k < used.length; k++) {
            used[k] = model.newExpression("room" + k).upper(seating.room()[k]);
        }
        for (int s = 0; s < open.length; s++) {
            Expression where = model.newExpression("where" + s).level(0).set(open[s], -1);
            for (int k = 0; k < used.length; k++) {
                if (Double.isFinite(seating.cost()[s][k])) {
                    Variable sits = model.newVariable("z" + s + "_" + k).binary().weight(seating.cost()[s][k]);
                    where.set(sits, 1);
                    used[k].set(sits, 1);
                }
            }
        }
        for (Seating.Carrier c : seating.carriers()) {
            Expression all = model.newExpression("carriers" + c.kind()).upper(c.most());
            for (int k : c.in()) {
                Variable here = model.newVariable("c" + c.kind() + "_" + k).integer().lower(0).upper(c.most()).weight(c.cost());
                all.set(here, 1);
                used[k].set(here, 1);
                used[c.kind()].set(here, -c.seats());
            }
        }
    }
}
