// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.advice;

import java.util.Comparator;
import java.util.List;

import punchwright.engine.feature.Feature;
import punchwright.engine.feature.FeatureSet;
import punchwright.engine.geometry.Point;
import punchwright.engine.planning.PartDemand;
import punchwright.engine.planning.PartFeatures;
import punchwright.engine.tooling.ChoiceWeights;

/**
 * A part of the order book with its features, found once.
 *
 * @param number     from 0, in the order of the book; equal parts of several orders share it
 * @param demand     the part
 * @param features   what must be made
 * @param approachMm usual travel to the next feature: the mean distance of an opening from the nearest other one
 */
record BookPart(int number, PartDemand demand, FeatureSet features, double approachMm) {

    /** Travel is taken to be no shorter than a hit's pitch and no longer than the usual one. */
    private static final double LEAST_MM = 8;
    /** Openings looked at for the mean. */
    private static final int MOST = 400;

    static BookPart of(int number, PartDemand demand) {
        FeatureSet features = PartFeatures.of(demand);
        return new BookPart(number, demand, features, approach(features));
    }

    private static double approach(FeatureSet set) {
        List<Point> all = set.features().stream().filter(Feature::isOpening).map(Feature::center)
                .sorted(Comparator.comparingDouble(Point::x).thenComparing(Point::y)).limit(MOST).toList();
        if (all.size() < 2) {
            return ChoiceWeights.USUAL.approachMm();
        }
        double mean = all.stream().mapToDouble(p -> all.stream().filter(q -> q != p).mapToDouble(p::distance).min().orElse(0))
                .average().orElse(0);
        return Math.max(LEAST_MM, Math.min(mean, ChoiceWeights.USUAL.approachMm()));
    }

    /** Weights of the choice at a machine's rate. */
    ChoiceWeights weights(double ratePerHour) {
        ChoiceWeights u = ChoiceWeights.USUAL;
        return new ChoiceWeights(ratePerHour, u.partsPerChange(), approachMm, u.reachSecondsPerMm(), u.sliverSeconds());
    }

    /** Material and thickness: parts of an order that share sheets and a set-up. */
    String sheet() {
        return demand.material().id() + "|" + demand.thicknessMm();
    }
}
