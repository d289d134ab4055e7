// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.feature;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.InsideTest;
import punchwright.engine.geometry.Openings;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Segment;
import punchwright.engine.geometry.Shape;

class OutlineTest {

    @Test
    void edgesCoverTheOutlineOnceInOrderWithMaterialOnTheLeft() {
        Shape plate = new Shape(Openings.rectangle(100, 60, 8).reversed(), List.of(Contour.circle(Point.ORIGIN, 10)));
        List<Feature> edges = FeatureRecognition.recognise("test", plate).features().stream()
                .filter(f -> !f.isOpening()).toList();
        assertEquals(8, edges.size());
        assertEquals(4, edges.stream().filter(f -> f.kind() == FeatureKind.ARC_EDGE && f.cornerRadiusMm() == 8).count());
        InsideTest inside = new InsideTest(plate.outer(), 1e-4);
        for (int i = 0; i < edges.size(); i++) {
            Segment s = edges.get(i).path().get(0);
            assertEquals(0, s.end().distance(edges.get((i + 1) % 8).path().get(0).start()), 1e-9);
            assertTrue(inside.contains(s.pointAt(0.5).plus(s.tangentAt(0.5).left().times(0.1))));
        }
        assertEquals(plate.outer().lengthMm(), edges.stream().mapToDouble(Feature::lengthMm).sum(), 1e-9);
    }

    @Test
    void numbersRunFromOneAndOpeningsComeFirst() {
        Shape plate = new Shape(Contour.rectangle(0, 0, 50, 50), List.of(Contour.circle(new Point(10, 10), 5),
                Contour.rectangle(20, 20, 10, 10)));
        List<Feature> features = FeatureRecognition.recognise("test", plate).features();
        for (int i = 0; i < features.size(); i++) {
            assertEquals(i + 1, features.get(i).number());
        }
        assertEquals(List.of(FeatureKind.ROUND, FeatureKind.SQUARE, FeatureKind.STRAIGHT_EDGE, FeatureKind.STRAIGHT_EDGE,
                FeatureKind.STRAIGHT_EDGE, FeatureKind.STRAIGHT_EDGE), features.stream().map(Feature::kind).toList());
        assertFalse(features.get(0).contour().isCounterClockwise());
    }

    @Test
    void aDiscHasOneArcEdge() {
        List<Feature> features = FeatureRecognition.recognise("disc", new Shape(Contour.circle(Point.ORIGIN, 80), List.of()))
                .features();
        assertEquals(1, features.size());
        assertEquals(FeatureKind.ARC_EDGE, features.get(0).kind());
        assertEquals(80 * Math.PI, features.get(0).lengthMm(), 1e-9);
    }

    @Test
    void anLShapedHoleIsFreeAndSaysSo() {
        Contour l = Contour.polygon(List.of(new Point(10, 10), new Point(30, 10), new Point(30, 15), new Point(15, 15),
                new Point(15, 30), new Point(10, 30)));
        FeatureSet set = FeatureRecognition.recognise("test", new Shape(Contour.rectangle(0, 0, 50, 50), List.of(l)));
        assertEquals(FeatureKind.FREE_OPENING, set.features().get(0).kind());
        assertEquals(List.of(FeatureReason.FREE_OPENING), set.findings().stream().map(f -> f.reason()).toList());
        assertEquals(l.areaMm2(), set.features().get(0).contour().areaMm2(), 1e-9);
    }

    @Test
    void almostRegularIsNotRegular() {
        Contour trapezoid = Contour.polygon(List.of(new Point(0, 0), new Point(20, 0), new Point(19.9, 10), new Point(0, 10)));
        FeatureSet set = FeatureRecognition.recognise("test", new Shape(Contour.rectangle(-9, -9, 50, 50), List.of(trapezoid)));
        assertEquals(FeatureKind.FREE_OPENING, set.features().get(0).kind());
    }
}
