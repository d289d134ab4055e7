// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.feature;

import java.util.List;

import punchwright.engine.finding.Finding;
import punchwright.engine.geometry.Shape;

/**
 * The features of one part.
 *
 * @param part     name of the part
 * @param shape    as given
 * @param features numbered from 1: openings, then the edges of the outer contour in order, then forms
 * @param findings what was noticed
 * @param details  corner radii, chamfers and notches that edges make together
 * @param patterns openings that lie regularly
 */
public record FeatureSet(String part, Shape shape, List<Feature> features, List<Finding> findings, List<OutlineDetail> details,
        List<Pattern> patterns) {

    /** The same with other features; findings, details and patterns stay. */
    public FeatureSet withFeatures(List<Feature> others) {
        return new FeatureSet(part, shape, others, findings, details, patterns);
    }

    /** Without details and patterns. */
    public FeatureSet(String part, Shape shape, List<Feature> features, List<Finding> findings) {
        this(part, shape, features, findings, List.of(), List.of());
    }

    public FeatureSet {
        features = List.copyOf(features);
        findings = List.copyOf(findings);
        details = List.copyOf(details);
        patterns = List.copyOf(patterns);
    }
}
