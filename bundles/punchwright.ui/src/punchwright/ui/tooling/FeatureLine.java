// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.tooling;

import java.util.List;

import punchwright.engine.feature.Feature;
import punchwright.engine.tooling.Alternative;
import punchwright.engine.tooling.FeatureWays;

/**
 * Features of one kind and size that are made in the same way: a line of the table.
 *
 * @param features  what is made
 * @param ways      what was weighed for each
 * @param balloons  numbers of the tools
 * @param before    tools of the choice without wishes
 * @param money     cost of all of them, currency
 * @param moneyFree the same in the choice without wishes
 * @param hitsFree  hits in the choice without wishes
 * @param pinned    name of the tool that is pinned to them; empty where none is
 */
public record FeatureLine(List<Feature> features, List<FeatureWays> ways, List<Integer> balloons, String before, double money,
        double moneyFree, int hitsFree, String pinned) {

    /** Lines are equal when they show the same features, so that the selection stays when a choice changes. */
    @Override
    public boolean equals(Object other) {
        return other instanceof FeatureLine line && numbers().equals(line.numbers());
    }

    @Override
    public int hashCode() {
        return numbers().hashCode();
    }

    /** Numbers of its features. */
    public List<Integer> numbers() {
        return features.stream().map(Feature::number).toList();
    }

    /** The chosen way of the first feature; null when it cannot be made. */
    public Alternative chosen() {
        return chosen(ways.get(0));
    }

    static Alternative chosen(FeatureWays ways) {
        return ways.alternatives().stream().filter(Alternative::chosen).findFirst().orElse(null);
    }

    /** Hits of all its features. */
    public int hits() {
        return ways.stream().map(FeatureLine::chosen).filter(a -> a != null).mapToInt(Alternative::hits).sum();
    }

    /** Press time of all its features, s. */
    public double seconds() {
        return ways.stream().map(FeatureLine::chosen).filter(a -> a != null).mapToDouble(Alternative::seconds).sum();
    }

    /** Names of the chosen tools; empty when it cannot be made. */
    public String tools() {
        return chosen() == null ? "" : tools(chosen());
    }

    static String tools(Alternative way) {
        return String.join(" + ", way.tools().stream().map(t -> t.name()).distinct().toList());
    }
}
