// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.planning;

import java.util.ArrayList;
import java.util.List;

import punchwright.engine.feature.FeatureSet;
import punchwright.engine.tooling.ChoiceWeights;
import punchwright.engine.tooling.OrderChoice;
import punchwright.engine.tooling.OrderPart;
import punchwright.engine.tooling.OrderSelection;
import punchwright.engine.tooling.Readiness;
import punchwright.engine.tooling.ToolingJob;

/** The parts of a sheet job: their features, forms included, and the operations that make them, tools chosen together. */
final class PartPlanner {

    private final PlanRequest request;

    PartPlanner(PlanRequest request) {
        this.request = request;
    }

    /** {@code readiness}: with the number of sheets that the set-up is for. */
    List<PartPlan> plan(List<PartDemand> demands, Readiness readiness) {
        List<FeatureSet> features = demands.stream().map(PartFeatures::of).toList();
        List<OrderPart> order = new ArrayList<>();
        for (int i = 0; i < demands.size(); i++) {
            PartDemand d = demands.get(i);
            ToolingJob job = new ToolingJob(features.get(i), d.material(), d.thicknessMm(), request.machine(), request.tools(),
                    request.holders(), request.rules().tooling(), request.elsewhere());
            order.add(new OrderPart(job, d.wishes().on(features.get(i)), d.mostPieces(), d.anglesDeg().getFirst()));
        }
        OrderSelection selection = OrderChoice.choose(order, readiness, ChoiceWeights.USUAL);
        List<PartPlan> plans = new ArrayList<>();
        for (int i = 0; i < demands.size(); i++) {
            plans.add(new PartPlan(demands.get(i), features.get(i), selection.parts().get(i)));
        }
        return plans;
    }
}
