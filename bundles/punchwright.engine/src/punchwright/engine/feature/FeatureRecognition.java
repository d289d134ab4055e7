// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.feature;

import java.util.ArrayList;
import java.util.List;

import punchwright.engine.drawing.FormContour;
import punchwright.engine.finding.FindingCollector;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.ContourTidy;
import punchwright.engine.geometry.Segment;
import punchwright.engine.geometry.Shape;

/** Recognises the features of a part: the entry of the package. */
public final class FeatureRecognition {

    /** Greatest distance of a drawn contour from the form it is taken for, in mm. */
    public static final double USUAL_TOLERANCE_MM = 0.02;
    /** Greatest shift when pieces of one line or circle are joined, in mm. */
    private static final double JOIN_MM = 0.01;
    private static final double TINY_MM = 0.2;
    private static final int MOST_PER_REASON = 20;

    private FeatureRecognition() {
    }

    /** Recognises with {@link #USUAL_TOLERANCE_MM}. */
    public static FeatureSet recognise(String part, Shape shape) {
        return recognise(part, shape, USUAL_TOLERANCE_MM);
    }

    /** Recognises a part and the forms that its drawing marks, with {@link #USUAL_TOLERANCE_MM}. */
    public static FeatureSet recognise(String part, Shape shape, List<FormContour> forms) {
        FeatureSet flat = recognise(part, shape, USUAL_TOLERANCE_MM);
        if (forms.isEmpty()) {
            return flat;
        }
        List<Feature> features = new ArrayList<>(flat.features());
        features.addAll(FormRecognition.forms(features.size() + 1, forms, new OpeningRecognition(USUAL_TOLERANCE_MM), JOIN_MM));
        return flat.withFeatures(features);
    }

    /**
     * @param part        name of the part, as the findings give it
     * @param shape       in mm
     * @param toleranceMm greatest distance from the ideal form, above 0
     * @return openings in the order of the shape, then the edges of the outer contour in order
     */
    public static FeatureSet recognise(String part, Shape shape, double toleranceMm) {
        FindingCollector findings = new FindingCollector(part, MOST_PER_REASON);
        OpeningRecognition openings = new OpeningRecognition(toleranceMm);
        List<Feature> features = new ArrayList<>();
        for (Contour hole : shape.holes()) {
            features.add(opening(features.size() + 1, hole, openings, findings));
        }
        List<Feature> edges = new ArrayList<>();
        for (Segment s : ContourTidy.tidy(shape.outer(), JOIN_MM).oriented(true).segments()) {
            edges.add(EdgeRecognition.edge(features.size() + edges.size() + 1, s));
        }
        features.addAll(edges);
        return new FeatureSet(part, shape, features, findings.findings(), OutlineDetails.of(edges, shape.outer()),
                PatternRecognition.of(features));
    }

    private static Feature opening(int number, Contour drawn, OpeningRecognition openings, FindingCollector findings) {
        Contour hole = ContourTidy.tidy(drawn, JOIN_MM);
        Match m = openings.recognise(hole.oriented(true), drawn);
        if (m.kind() == FeatureKind.FREE_OPENING) {
            findings.addAt(m.center(), FeatureReason.FREE_OPENING, number, m.lengthMm(), m.widthMm(), hole.segments().size());
        }
        if (Math.max(m.lengthMm(), m.widthMm()) < TINY_MM) {
            findings.addAt(m.center(), FeatureReason.TINY_OPENING, number, Math.max(m.lengthMm(), m.widthMm()));
        }
        Contour clockwise = m.kind() == FeatureKind.ROUND ? IdealContours.of(m).reversed() : hole.oriented(false);
        return new Feature(number, m.kind(), m.center(), m.angleDeg(), m.lengthMm(), m.widthMm(), m.cornerRadiusMm(), clockwise,
                clockwise.segments(), "");
    }
}
