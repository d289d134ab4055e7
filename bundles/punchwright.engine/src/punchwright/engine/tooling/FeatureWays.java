// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.List;

import punchwright.engine.feature.Feature;
import punchwright.engine.finding.Finding;

/**
 * All that was weighed for one feature (or for neighbouring edges made together).
 *
 * @param features     what is made
 * @param alternatives cheapest first, exactly one chosen unless there is none
 * @param passedOver   one typed reason for each tool owned that takes no part in the chosen way, in the tools' order
 */
public record FeatureWays(List<Feature> features, List<Alternative> alternatives, List<Finding> passedOver) {

    public FeatureWays {
        features = List.copyOf(features);
        alternatives = List.copyOf(alternatives);
        passedOver = List.copyOf(passedOver);
    }
}
