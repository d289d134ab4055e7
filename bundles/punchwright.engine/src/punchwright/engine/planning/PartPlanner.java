// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.planning;

import punchwright.engine.feature.FeatureSet;
import punchwright.engine.tooling.ChoiceWeights;
import punchwright.engine.tooling.ToolChoice;
import punchwright.engine.tooling.ToolingJob;

/** One part: its features, forms included, and the operations that make them. */
final class PartPlanner {

    private final PlanRequest request;

    PartPlanner(PlanRequest request) {
        this.request = request;
    }

    PartPlan plan(PartDemand demand) {
        FeatureSet features = PartFeatures.of(demand);
        ToolingJob job = new ToolingJob(features, demand.material(), demand.thicknessMm(), request.machine(), request.tools(),
                request.holders(), request.rules().tooling());
        return new PartPlan(demand, features, ToolChoice.choose(job, ChoiceWeights.USUAL, demand.wishes().on(features)));
    }
}
