// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.List;
import java.util.Optional;
import java.util.Set;

import punchwright.engine.feature.Feature;
import punchwright.engine.finding.Finding;
import punchwright.engine.press.Machine;
import punchwright.engine.press.Material;

/** Single questions about a tool, answered as the choice of tools answers them. */
public final class ToolCheck {

    private ToolCheck() {
    }

    /** Why the tool cannot work the job's material, thickness and machine at all; empty when it can. */
    public static Optional<Finding> refusal(ToolingJob job, Tool tool) {
        return Optional.ofNullable(new ToolLimits(job.with(tool), Set.of()).refusal(tool));
    }

    /** Whether one hit of the tool makes the opening, at whatever angle. */
    public static boolean exact(Feature feature, Tool tool, ToolingRules rules) {
        return new ExactHit(rules).matches(feature, tool);
    }

    /** Estimated press time of an operation's hits with the moves between them, s. */
    public static double seconds(Machine machine, ChoiceWeights weights, Operation operation) {
        return new HitTime(machine, weights).seconds(operation.hits());
    }

    /** Cost of wear of a hit, currency; 0 where the record gives no life. */
    public static double wearPerHit(Tool tool, Material material) {
        return ToolLimits.wearPerHit(tool, material);
    }

    /** The share of the wear that pays the tool's price, not its grinding; 0 to 1. */
    public static double priceShare(Tool tool) {
        double all = tool.price() + ToolLimits.grinds(tool) * tool.grindCost();
        return all > 0 ? tool.price() / all : 0;
    }
}
