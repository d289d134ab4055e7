// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.plans;

import java.util.List;

import punchwright.engine.feature.FeatureSet;
import punchwright.engine.finding.Finding;
import punchwright.engine.planning.PartWishes;
import punchwright.engine.press.Machine;
import punchwright.engine.tooling.Alternative;
import punchwright.engine.tooling.ChoiceWeights;
import punchwright.engine.tooling.FeatureWays;
import punchwright.engine.tooling.Loading;
import punchwright.engine.tooling.ToolWeighing;
import punchwright.engine.tooling.ToolingJob;

/**
 * The choice of tools for one part on one machine, without and with the engineer's wishes.
 *
 * @param job      what was weighed: features, material, machine, tools
 * @param wishes   the engineer's
 * @param weights  what makes one choice dearer than another
 * @param free     the choice without wishes
 * @param wished   the choice with them; the same object when there are none
 * @param loading  where the tools of the wished choice stand, the part lying as drawn
 * @param findings what was noticed in the input and in the wished choice
 */
public record PartWeighing(ToolingJob job, PartWishes wishes, ChoiceWeights weights, ToolWeighing free, ToolWeighing wished,
        Loading loading, List<Finding> findings) {

    public PartWeighing {
        findings = List.copyOf(findings);
    }

    /** What must be made. */
    public FeatureSet features() {
        return job.features();
    }

    /** Why nothing makes the first of these features; empty where something does. */
    public List<Finding> reasons(FeatureWays ways) {
        if (ways.alternatives().stream().anyMatch(Alternative::chosen)) {
            return List.of();
        }
        String subject = "part " + features().part() + ", feature " + ways.features().getFirst().number() + " (";
        return wished.operations().findings().stream().filter(f -> f.isError() && f.subject().startsWith(subject)).toList();
    }

    /** The machine as the engine sees it. */
    public Machine machine() {
        return job.machine();
    }

    /** Money for a cost in seconds of the machine, in the library's currency. */
    public double money(double costSeconds) {
        return costSeconds * weights.ratePerHour() / 3600;
    }
}
