// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.List;

/**
 * Chooses the tools and hits that make one part: the stage's entry point.
 *
 * <p>Input: features, material, thickness, machine, tools and holders owned, shop rules. Result: operations in part
 * coordinates, how far hits reach beyond the part, and findings: an error with a typed reason for each feature that cannot be
 * made, warnings and notes. The same input gives the same result.
 */
public final class ToolChoice {

    private ToolChoice() {
    }

    public static OperationList choose(ToolingJob job) {
        return choose(job, ChoiceWeights.USUAL);
    }

    public static OperationList choose(ToolingJob job, ChoiceWeights weights) {
        return choose(job, weights, ToolWishes.NONE);
    }

    /** The choice under the engineer's wishes. */
    public static OperationList choose(ToolingJob job, ChoiceWeights weights, ToolWishes wishes) {
        return run(job, weights, wishes, false, new WaysMemory()).operations();
    }

    /** The choice with its cost, without alternatives and reasons: for those who ask often. */
    public static ToolWeighing price(ToolingJob job, ChoiceWeights weights, ToolWishes wishes) {
        return run(job, weights, wishes, false, new WaysMemory());
    }

    /** The same, again for a part weighed before with other tools. */
    public static ToolWeighing price(ToolingJob job, ChoiceWeights weights, ToolWishes wishes, WaysMemory memory) {
        return run(job, weights, wishes, false, memory);
    }

    /** The choice with all alternatives and a reason for every tool passed over, under the engineer's wishes. */
    public static ToolWeighing weigh(ToolingJob job, ChoiceWeights weights, ToolWishes wishes) {
        return run(job, weights, wishes, true, new WaysMemory());
    }

    /** The same, keeping what is found out for weighing the part again with other tools. */
    public static ToolWeighing weigh(ToolingJob job, ChoiceWeights weights, ToolWishes wishes, WaysMemory memory) {
        return run(job, weights, wishes, true, memory);
    }

    private static ToolWeighing run(ToolingJob job, ChoiceWeights weights, ToolWishes wishes, boolean withWays,
            WaysMemory memory) {
        PartWays ways = new PartWays(job, weights, wishes, memory);
        Selection.Result result = new Selection(ways.candidates(), new HitTime(job.machine(), weights).changeSeconds(), weights)
                .choose();
        return new ToolWeighing(ways.operations(result.chosen()), withWays ? ways.comparison(result.chosen()) : List.of(),
                result.cost(), result.bound());
    }
}
