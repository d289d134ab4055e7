// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.planning;

import java.util.ArrayList;
import java.util.List;

import punchwright.engine.drawing.FormContour;
import punchwright.engine.feature.Feature;
import punchwright.engine.feature.FeatureKind;
import punchwright.engine.feature.FeatureRecognition;
import punchwright.engine.feature.FeatureSet;
import punchwright.engine.finding.Finding;

/** All that must be made on one part: the features of its flat shape and its forms, numbered on. */
public final class PartFeatures {

    /** A named form this near to the middle of a drawn one is that form, in mm. */
    private static final double SAME_PLACE_MM = 0.5;

    private PartFeatures() {
    }

    /** The features with what was noticed, wishes that found no feature included. */
    public static FeatureSet of(PartDemand demand) {
        FeatureSet set = withForms(FeatureRecognition.recognise(demand.name(), demand.shape(), unnamed(demand)), demand.forms());
        List<Finding> lost = demand.wishes().lost(set);
        if (lost.isEmpty()) {
            return set;
        }
        List<Finding> findings = new ArrayList<>(set.findings());
        findings.addAll(lost);
        return new FeatureSet(set.part(), set.shape(), set.features(), findings, set.details(), set.patterns());
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
        return flat.withFeatures(all);
    }

    /** Forms that the drawing marks and the part does not name: with no named form in the middle of theirs. */
    private static List<FormContour> unnamed(PartDemand demand) {
        return demand.drawnForms().stream().filter(f -> demand.forms().stream().noneMatch(named -> isAt(f, named))).toList();
    }

    private static boolean isAt(FormContour drawn, FormDemand named) {
        return drawn.bounds().center().distance(named.at()) <= SAME_PLACE_MM;
    }
}
