// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.planning;

import java.util.ArrayList;
import java.util.List;

import punchwright.engine.feature.Feature;
import punchwright.engine.feature.FeatureKind;
import punchwright.engine.feature.FeatureRecognition;
import punchwright.engine.feature.FeatureSet;
import punchwright.engine.tooling.ToolChoice;
import punchwright.engine.tooling.ToolingJob;

/** One part: its features, forms included, and the operations that make them. */
final class PartPlanner {

    private final PlanRequest request;

    PartPlanner(PlanRequest request) {
        this.request = request;
    }

    PartPlan plan(PartDemand demand) {
        FeatureSet features = withForms(FeatureRecognition.recognise(demand.name(), demand.shape()), demand.forms());
        ToolingJob job = new ToolingJob(features, demand.material(), demand.thicknessMm(), request.machine(), request.tools(),
                request.holders(), request.rules().tooling());
        return new PartPlan(demand, features, ToolChoice.choose(job));
    }

    private static FeatureSet withForms(FeatureSet flat, List<FormDemand> forms) {
        if (forms.isEmpty()) {
            return flat;
        }
        List<Feature> all = new ArrayList<>(flat.features());
        for (FormDemand form : forms) {
            all.add(new Feature(all.size() + 1, FeatureKind.FORM, form.at(), form.angleDeg(), form.lengthMm(), form.widthMm(),
                    0, null, List.of(), form.shape().name()));
        }
        return new FeatureSet(flat.part(), flat.shape(), all, flat.findings());
    }
}
