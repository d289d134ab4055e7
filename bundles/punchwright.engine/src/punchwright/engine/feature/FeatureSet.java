// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.feature;

import java.util.List;

import punchwright.engine.finding.Finding;
import punchwright.engine.geometry.Shape;

/** The features of one part, numbered from 1, with what was noticed. */
public record FeatureSet(String part, Shape shape, List<Feature> features, List<Finding> findings) {

    public FeatureSet {
        features = List.copyOf(features);
        findings = List.copyOf(findings);
    }
}
