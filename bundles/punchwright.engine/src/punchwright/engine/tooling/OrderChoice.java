// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.ArrayList;
import java.util.List;

import punchwright.engine.tooling.setup.SetupProblem;
import punchwright.engine.tooling.setup.SetupProblem.Solution;
import punchwright.engine.tooling.setup.SetupSolver;

/**
 * Chooses the tools of all parts of an order that run on one machine with one set-up, and their places with them.
 *
 * <p>Input: the parts with their pieces, and what stands ready. Result: operations of each part, with cost and bound. What is
 * least: pieces times hits, wear and web, and once for the order the changes and the making ready of every tool in its place,
 * insert or by hand. Size, force, turning and number of places, inserts and tools on hand are limits, so that a choice that
 * cannot be loaded is not made. Each part is taken as lying in one direction; where the layout turns parts, the loading decides
 * again. Where no choice finds places for all, each part keeps the choice it would make alone, and the loading says what has no
 * place.
 */
public final class OrderChoice {

    /** Nodes of the integer program after which a gap is stated. */
    private static final int MOST_NODES = 3000;

    private OrderChoice() {
    }

    public static OrderSelection choose(List<OrderPart> parts, Readiness readiness, ChoiceWeights weights) {
        List<PartWays> ways = PartWays.of(parts, weights);
        if (parts.isEmpty()) {
            return new OrderSelection(List.of(), 0, 0);
        }
        OrderProblem order = new OrderProblem(parts, ways, weights);
        Solution s = SetupSolver.solve(order.problem(model(parts, readiness)), MOST_NODES);
        List<int[]> chosen = Double.isFinite(s.cost()) ? order.chosen(s.choice()) : alone(ways, weights);
        List<OperationList> lists = new ArrayList<>();
        for (int p = 0; p < parts.size(); p++) {
            lists.add(ways.get(p).operations(chosen.get(p)));
        }
        return new OrderSelection(lists, s.cost(), s.bound());
    }

    /** The arithmetic of the choice alone, to measure solvers by. */
    public static SetupProblem problem(List<OrderPart> parts, Readiness readiness, ChoiceWeights weights) {
        List<PartWays> ways = PartWays.of(parts, weights);
        return new OrderProblem(parts, ways, weights).problem(model(parts, readiness));
    }

    private static SeatModel model(List<OrderPart> parts, Readiness readiness) {
        ToolingJob any = parts.getFirst().job();
        return new SeatModel(any.machine(), any.holders(), readiness);
    }

    private static List<int[]> alone(List<PartWays> ways, ChoiceWeights weights) {
        return ways.stream().map(w -> new Selection(w.candidates(), new HitTime(w.job().machine(), weights)
                .changeSeconds(), weights)
                .choose().chosen()).toList();
    }
}
