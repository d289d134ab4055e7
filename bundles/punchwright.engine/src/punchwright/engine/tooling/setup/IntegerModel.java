// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling.setup;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;
import org.ojalgo.optimisation.integer.IntegerStrategy;
import org.ojalgo.type.context.NumberContext;

import punchwright.engine.tooling.setup.SetupProblem.Option;

/**
 * The problem as an integer program for ojAlgo: set-ups 0 or 1, whole numbers of
 * carriers; options and seats need no such demand, since with those decided their best values are whole by themselves.
 *
 * <p>A task uses a set-up only if it is open (one row for each task and set-up, which keeps the relaxation tight); an open set-up
 * sits in one seat; seats in use do not exceed the room and what carriers give. One worker and a limit of nodes, so that the
 * same problem gives the same result.
 */
final class IntegerModel {

    private static final NumberContext GAP = NumberContext.of(12, 9);

    private final SetupProblem p;
    private final ExpressionsBasedModel model = new ExpressionsBasedModel();
    private final Variable[] open;
    private final List<Variable[]> takes = new ArrayList<>();

    /**
     * @param choice option of each task; null when none was found
     * @param proven whether it is the best
     */
    record Answer(int[] choice, boolean proven) {
    }

    private IntegerModel(SetupProblem p) {
        this.p = p;
        open = new Variable[p.setups()];
    }

    /** Solves with at most {@code mostNodes} nodes of the search tree. */
    static Answer solve(SetupProblem p, int mostNodes) {
        IntegerModel m = new IntegerModel(p);
        m.tasks();
        m.limits();
        if (p.seating() != null) {
            m.seats();
        }
        m.model.options.integer(IntegerStrategy.DEFAULT.withParallelism(() -> 1).withGapTolerance(GAP));
        m.model.options.iterations_abort = mostNodes;
        m.model.options.iterations_suffice = mostNodes;
        return m.answer(m.model.minimise());
    }

    private Answer answer(Optimisation.Result r) {
        boolean optimal = r.getState().isOptimal();
        if (!r.getState().isFeasible()) {
            return new Answer(null, r.getState() == Optimisation.State.INFEASIBLE);
        }
        boolean[] there = new boolean[open.length];
        for (int s = 0; s < open.length; s++) {
            there[s] = open[s] != null && r.doubleValue(model.indexOf(open[s])) > 0.5;
        }
        int[] choice = new int[takes.size()];
        for (int t = 0; t < choice.length; t++) {
            choice[t] = cheapest(p.tasks().get(t), there);
        }
        return new Answer(choice, optimal);
    }

    /** With the set-ups decided each task takes its cheapest option whose set-ups are there. */
    private static int cheapest(List<Option> options, boolean[] there) {
        int best = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int o = 0; o < options.size(); o++) {
            boolean ready = java.util.Arrays.stream(options.get(o).setups()).allMatch(s -> there[s]);
            if (ready && options.get(o).cost() < least) {
                least = options.get(o).cost();
                best = o;
            }
        }
        return best;
    }

    private static BigDecimal money(double cost) {
        return BigDecimal.valueOf(cost).setScale(9, RoundingMode.HALF_EVEN);
    }

    private Variable open(int s) {
        if (open[s] == null) {
            open[s] = model.newVariable("open" + s).binary().weight(money(p.setupCost()[s]));
        }
        return open[s];
    }

    private void tasks() {
        for (int t = 0; t < p.tasks().size(); t++) {
            List<Option> options = p.tasks().get(t);
            Variable[] take = new Variable[options.size()];
            Expression one = model.newExpression("task" + t).level(1);
            Expression[] uses = new Expression[open.length];
            for (int o = 0; o < take.length; o++) {
                take[o] = model.newVariable("take" + t + "_" + o).lower(0).upper(1).weight(money(options.get(o).cost()));
                one.set(take[o], 1);
                for (int s : options.get(o).setups()) {
                    uses[s] = uses[s] != null ? uses[s] : model.newExpression("use" + t + "_" + s).upper(0).set(open(s), -1);
                    uses[s].set(take[o], 1);
                }
            }
            takes.add(take);
        }
    }

    private void limits() {
        for (int l = 0; l < p.limits().length; l++) {
            Expression sum = model.newExpression("limit" + l).upper(p.limits()[l]);
            for (int s = 0; s < open.length; s++) {
                if (open[s] != null && p.limitOf()[s] == l) {
                    sum.set(open[s], 1);
                }
            }
        }
    }

    private void seats() {
        Seating seating = p.seating();
        Expression[] room = new Expression[seating.kinds()];
        for (int k = 0; k < room.length; k++) {
            room[k] = model.newExpression("room" + k).upper(seating.room()[k]);
        }
        for (int s = 0; s < open.length; s++) {
            Expression where = open[s] == null ? null : model.newExpression("where" + s).level(0).set(open[s], -1);
            for (int k = 0; where != null && k < room.length; k++) {
                if (Double.isFinite(seating.cost()[s][k])) {
                    Variable sits = model.newVariable("sits" + s + "_" + k).lower(0).upper(1).weight(money(seating.cost()[s][k]));
                    where.set(sits, 1);
                    room[k].set(sits, 1);
                }
            }
        }
        for (int c = 0; c < seating.carriers().size(); c++) {
            carrier(seating.carriers().get(c), c, room);
        }
    }

    private void carrier(Seating.Carrier carrier, int number, Expression[] room) {
        Expression all = model.newExpression("carriers" + number).upper(carrier.most());
        for (int k : carrier.in()) {
            Variable here = model.newVariable("carrier" + number + "_" + k).integer().lower(0).upper(carrier.most())
                    .weight(money(carrier.cost()));
            all.set(here, 1);
            room[k].set(here, 1);
            room[carrier.kind()].set(here, -carrier.seats());
        }
    }
}
