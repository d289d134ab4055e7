// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.feature;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import punchwright.engine.drawing.DrawingException;
import punchwright.engine.drawing.Hole;
import punchwright.engine.drawing.HoleArrangement;
import punchwright.engine.drawing.ParametricParts;
import punchwright.engine.geometry.Arc;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Line;
import punchwright.engine.geometry.Openings;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Pose;
import punchwright.engine.geometry.Shape;

/** Validation: regular fields and outlines whose pattern and details are known because they were made from them. */
class PatternsAndDetailsTest {

    private static List<Pattern> patterns(Shape s, double turnDeg) {
        return FeatureRecognition.recognise("test", s.moved(Pose.at(13, -7, turnDeg))).patterns();
    }

    private static void near(double expected, double actual) {
        assertEquals(expected, actual, 1e-6);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 17, 90, 211})
    void boltCircleOfAFlange(double turn) throws DrawingException {
        Pattern p = patterns(ParametricParts.flange("F", 165, 61, 125, 4, 18, 45), turn).get(0);
        assertEquals(Pattern.Kind.BOLT_CIRCLE, p.kind());
        assertEquals(4, p.columns());
        near(125, p.pitchMm());
        assertEquals((45 + turn) % 90, p.angleDeg(), 1e-6);
        assertEquals(List.of(2, 3, 4, 5), p.features());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 30, 133})
    void gridOfAPanel(double turn) throws DrawingException {
        Shape s = ParametricParts.perforatedPanel("P", 200, 100, Hole.round(0, 0, 5), 8, HoleArrangement.SQUARE, 10, 10);
        List<Pattern> found = patterns(s, turn);
        assertEquals(1, found.size());
        assertEquals(Pattern.Kind.GRID, found.get(0).kind());
        assertEquals(220, found.get(0).columns() * found.get(0).rows());
        near(8, found.get(0).pitchMm());
        near(8, found.get(0).rowPitchMm());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 41})
    void staggeredFields(double turn) throws DrawingException {
        for (HoleArrangement how : List.of(HoleArrangement.STAGGERED_60, HoleArrangement.STAGGERED_45)) {
            Shape s = ParametricParts.perforatedPanel("P", 200, 100, Hole.round(0, 0, 3), 9, how, 10, 10);
            List<Pattern> found = patterns(s, turn);
            assertEquals(1, found.size(), how.toString());
            assertEquals(Pattern.Kind.STAGGERED_GRID, found.get(0).kind());
            assertEquals(s.holes().size(), found.get(0).features().size());
            near(9, found.get(0).pitchMm());
            near(how == HoleArrangement.STAGGERED_60 ? 9 * Math.sqrt(3) / 2 : 4.5, found.get(0).rowPitchMm());
        }
    }

    @Test
    void aRowAndSomethingElse() throws DrawingException {
        List<Hole> holes = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            holes.add(Hole.obround(20 + 30 * i, 20, 0, 20, 6));
        }
        holes.add(Hole.round(100, 70, 12));
        List<Pattern> found = patterns(ParametricParts.plate("P", 200, 100, 0, holes), 0);
        assertEquals(1, found.size());
        assertEquals(Pattern.Kind.ROW, found.get(0).kind());
        assertEquals(5, found.get(0).columns());
        near(30, found.get(0).pitchMm());
    }

    @Test
    void fourCornersAreAGridAndNoBoltCircle() throws DrawingException {
        Shape s = ParametricParts.plate("P", 100, 100, 0,
                List.of(Hole.round(20, 20, 6), Hole.round(80, 20, 6), Hole.round(80, 80, 6), Hole.round(20, 80, 6)));
        assertEquals(Pattern.Kind.GRID, patterns(s, 0).get(0).kind());
    }

    @Test
    void manyHolesStayQuick() throws DrawingException {
        Shape s = ParametricParts.perforatedPanel("P", 2000, 1000, Hole.round(0, 0, 4), 6, HoleArrangement.STAGGERED_60, 10, 10);
        assertTrue(s.holes().size() > 60_000);
        assertTimeoutPreemptively(Duration.ofSeconds(60), () -> assertEquals(1, patterns(s, 0).size()));
    }

    @Test
    void cornersOfAPlate() {
        FeatureSet rounded = FeatureRecognition.recognise("P", new Shape(Openings.rectangle(100, 50, 6), List.of()));
        assertEquals(4, rounded.details().size());
        for (OutlineDetail d : rounded.details()) {
            assertEquals(OutlineDetail.Kind.CORNER_RADIUS, d.kind());
            near(6, d.radiusMm());
            near(Math.hypot(50, 25), d.place().norm());
        }
        Contour chamfered = Contour.polygon(List.of(new Point(0, 0), new Point(90, 0), new Point(100, 5), new Point(100, 50),
                new Point(0, 50)));
        List<OutlineDetail> one = FeatureRecognition.recognise("P", new Shape(chamfered, List.of())).details();
        assertEquals(1, one.size());
        assertEquals(OutlineDetail.Kind.CHAMFER, one.get(0).kind());
        near(10, one.get(0).lengthMm());
        near(5, one.get(0).depthMm());
        near(100, one.get(0).place().x());
    }

    /**
     * An edge that bends by 8 degrees of an arc and kinks back by 4 at both ends has no corner, and no place that is not a
     * number.
     */
    @Test
    void anArcBetweenParallelLinesIsNoCornerRadius() {
        double half = Math.toRadians(4);
        Arc arc = new Arc(new Point(50, 100), 100, -Math.PI / 2 - half, 2 * half);
        Point a = arc.start();
        Point b = arc.end();
        Contour outline = new Contour(List.of(new Line(new Point(0, a.y()), a), arc, new Line(b, new Point(100, b.y())),
                new Line(new Point(100, b.y()), new Point(100, 60)), new Line(new Point(100, 60), new Point(0, 60)),
                new Line(new Point(0, 60), new Point(0, a.y()))));
        assertEquals(List.of(), FeatureRecognition.recognise("P", new Shape(outline, List.of())).details());
    }

    @Test
    void notches() throws DrawingException {
        List<OutlineDetail> corner = FeatureRecognition.recognise("P",
                ParametricParts.notchedBracket("P", 200, 100, 15, 20, 4, List.of()))
                .details();
        assertEquals(4, corner.size());
        assertTrue(corner.stream().allMatch(d -> d.kind() == OutlineDetail.Kind.CORNER_NOTCH
                && Math.abs(d.lengthMm() * d.depthMm() - 300) < 1e-6 && d.edges().size() == 2));
        Contour edge = Contour.polygon(List.of(new Point(0, 0), new Point(40, 0), new Point(40, 12), new Point(60, 12),
                new Point(60, 0), new Point(100, 0), new Point(100, 50), new Point(0, 50)));
        OutlineDetail d = FeatureRecognition.recognise("P", new Shape(edge, List.of())).details().get(0);
        assertEquals(OutlineDetail.Kind.EDGE_NOTCH, d.kind());
        near(20, d.lengthMm());
        near(12, d.depthMm());
        near(50, d.place().x());
    }

    @Test
    void aRoundEdgeNotch() {
        Point a = new Point(40, 0);
        Point b = new Point(40, 12);
        Point c = new Point(60, 12);
        Contour outline = new Contour(List.of(new Line(new Point(0, 0), a), new Line(a, b),
                new Arc(new Point(50, 12), 10, Math.PI, -Math.PI),
                new Line(c, new Point(60, 0)), new Line(new Point(60, 0), new Point(100, 0)),
                new Line(new Point(100, 0), new Point(100, 50)),
                new Line(new Point(100, 50), new Point(0, 50)), new Line(new Point(0, 50), new Point(0, 0))));
        OutlineDetail d = FeatureRecognition.recognise("P", new Shape(outline, List.of())).details().get(0);
        assertEquals(OutlineDetail.Kind.EDGE_NOTCH, d.kind());
        near(10, d.radiusMm());
        near(22, d.depthMm());
        near(20, d.lengthMm());
    }
}
