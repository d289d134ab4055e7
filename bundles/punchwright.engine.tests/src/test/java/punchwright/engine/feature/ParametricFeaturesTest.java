// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.feature;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import punchwright.engine.drawing.DrawingException;
import punchwright.engine.drawing.DrawingOptions;
import punchwright.engine.drawing.DrawingReader;
import punchwright.engine.drawing.DxfWriter;
import punchwright.engine.drawing.Hole;
import punchwright.engine.drawing.HoleArrangement;
import punchwright.engine.drawing.ParametricParts;
import punchwright.engine.geometry.Shape;

/** Validation: parts by parameters against sizes of standards, their features, and there and back through DXF. */
class ParametricFeaturesTest {

    private static FeatureSet features(Shape s) {
        return FeatureRecognition.recognise("P", s);
    }

    private static List<Feature> openings(Shape s) {
        return features(s).features().stream().filter(Feature::isOpening).toList();
    }

    /** EN 1092-1, PN 16, from memory: outside diameter, bolt circle, hole, number. Bolts straddle the axes. */
    @ParameterizedTest
    @CsvSource({"50,165,125,18,4", "80,200,160,18,8", "100,220,180,18,8", "150,285,240,22,8", "200,340,295,22,12"})
    void flanges(double bore, double outer, double circle, double hole, int bolts) throws DrawingException {
        FeatureSet set = features(ParametricParts.flange("P", outer, bore, circle, bolts, hole, 180.0 / bolts));
        Pattern p = set.patterns().get(0);
        assertEquals(Pattern.Kind.BOLT_CIRCLE, p.kind());
        assertEquals(bolts, p.columns());
        assertEquals(circle, p.pitchMm(), 1e-6);
        assertEquals(180.0 / bolts, p.angleDeg(), 1e-6);
        Feature one = set.features().get(1);
        assertEquals(hole, one.lengthMm(), 1e-9);
        // Neighbours lie the chord d sin(180 / n) apart.
        assertEquals(circle * Math.sin(Math.PI / bolts), one.center().distance(set.features().get(2).center()), 1e-6);
    }

    /** IEC 60297-3-100 and EIA-310, from memory: height of the panel and of its mounting slots, slots 465.1 apart, 6.8 x 10.3. */
    @ParameterizedTest
    @CsvSource({"1,43.65,31.75", "2,88.1,76.2", "3,132.55,120.65", "4,177.0,165.1", "6,265.9,254.0", "9,399.25,387.35"})
    void rackPanels(int units, double height, double slots) throws DrawingException {
        Shape s = ParametricParts.rackPanel("P", units, List.of());
        assertEquals(482.6, s.bounds().width(), 1e-9);
        assertEquals(height, s.bounds().height(), 1e-9);
        FeatureSet set = features(s);
        List<Feature> o = openings(s);
        assertTrue(o.stream().allMatch(f -> f.kind() == FeatureKind.OBROUND && Math.abs(f.lengthMm() - 10.3) < 1e-9
                && Math.abs(f.widthMm() - 6.8) < 1e-9));
        Pattern grid = set.patterns().get(0);
        assertEquals(4, grid.columns() * grid.rows());
        assertEquals(465.1, Math.max(grid.pitchMm(), grid.rowPitchMm()), 1e-6);
        assertEquals(slots, Math.min(grid.pitchMm(), grid.rowPitchMm()), 1e-6);
    }

    /**
     * DIN 43673, from memory: width 40, two holes 13.5 in line, 20 from the end and 40 apart; widths 80 and 100, four holes 13.5,
     * 40 apart along the bar and 40 or 50 across.
     */
    @ParameterizedTest
    @CsvSource({"40,1,0", "80,2,40", "100,2,50"})
    void busbars(double width, int rows, double across) throws DrawingException {
        List<Hole> holes = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            for (double x : new double[] {20, 60}) {
                holes.add(Hole.round(x, width / 2 + (row - (rows - 1) / 2.0) * across, 13.5));
            }
        }
        Shape s = ParametricParts.busbar("P", 500, width, holes);
        FeatureSet set = features(s);
        assertTrue(openings(s).stream().allMatch(f -> f.kind() == FeatureKind.ROUND && Math.abs(f.lengthMm() - 13.5) < 1e-9));
        assertEquals(40, set.features().get(0).center().distance(set.features().get(1).center()), 1e-9);
        if (rows == 2) {
            Pattern grid = set.patterns().get(0);
            assertEquals(Pattern.Kind.GRID, grid.kind());
            assertEquals(40 + across, grid.pitchMm() + grid.rowPitchMm(), 1e-6);
        }
    }

    /** The holes of a large panel take the share of the field that the tables of ISO 7805 and DIN 24041 give: R 5-8 35.43 %. */
    @Test
    void perforatedPanelHasTheShareOfTheTables() throws DrawingException {
        Shape s = ParametricParts.perforatedPanel("P", 2000, 1000, Hole.round(0, 0, 5), 8, HoleArrangement.STAGGERED_60, 20, 20);
        Pattern p = features(s).patterns().get(0);
        double field = p.columns() * p.pitchMm() * p.rows() * p.rowPitchMm();
        assertEquals(35.43, 100 * (s.outer().areaMm2() - s.areaMm2()) / field, 0.005);
    }

    private static List<Shape> all() throws DrawingException {
        return List.of(ParametricParts.plate("P", 200, 100, 10, List.of(Hole.round(50, 50, 20), Hole.obround(120, 50, 30, 40, 10),
                new Hole(Hole.Form.HEXAGON, new punchwright.engine.geometry.Point(170, 40), 10, 12, 12, 0))),
                ParametricParts.flange("P", 165, 61, 125, 4, 18, 45),
                ParametricParts.perforatedPanel("P", 200, 100, Hole.round(0, 0, 5), 8, HoleArrangement.STAGGERED_60, 10, 10),
                ParametricParts.notchedBracket("P", 200, 100, 15, 20, 3, List.of(Hole.rectangle(100, 50, 20, 30, 12, 2))),
                ParametricParts.rackPanel("P", 2, List.of(Hole.rectangle(240, 44, 0, 100, 40, 0))),
                ParametricParts.busbar("P", 500, 60, List.of(Hole.obround(40, 30, 0, 24, 14), Hole.round(460, 30, 13.5))));
    }

    @Test
    void writtenAndReadBackTheFeaturesAreTheSame() throws DrawingException, IOException {
        for (Shape made : all()) {
            StringWriter text = new StringWriter();
            DxfWriter.write(List.of(made), text);
            List<Shape> back = DrawingReader.read(new ByteArrayInputStream(text.toString().getBytes(StandardCharsets.US_ASCII)),
                    "P", DrawingOptions.USUAL).shapes();
            assertEquals(1, back.size());
            assertSame(features(made), features(back.get(0)));
        }
    }

    private static void assertSame(FeatureSet a, FeatureSet b) {
        assertEquals(a.features().size(), b.features().size());
        for (Feature f : a.features()) {
            Feature g = b.features().stream().filter(h -> h.kind() == f.kind() && h.center().distance(f.center()) < 1e-6)
                    .findFirst().orElseThrow();
            assertEquals(f.lengthMm(), g.lengthMm(), 1e-6);
            assertEquals(f.widthMm(), g.widthMm(), 1e-6);
            assertEquals(f.cornerRadiusMm(), g.cornerRadiusMm(), 1e-6);
            assertEquals(0, Math.sin(Math.toRadians(f.angleDeg() - g.angleDeg())), 1e-6, f + " " + g);
        }
        assertEquals(a.details().stream().map(OutlineDetail::kind).sorted().toList(), b.details().stream()
                .map(OutlineDetail::kind).sorted().toList());
        assertEquals(a.patterns().stream().map(Pattern::kind).toList(), b.patterns().stream().map(Pattern::kind).toList());
    }

    private static void refused(String value, Executable part) {
        DrawingException e = assertThrows(DrawingException.class, part);
        assertTrue(e.finding().message().contains(value), e.finding().message());
        assertTrue(!e.finding().remedy().isEmpty());
    }

    @Test
    void badSizesAreRefusedWithTheirValue() {
        refused("0 mm", () -> ParametricParts.plate("P", 0, 100, 0, List.of()));
        refused("25000 mm", () -> ParametricParts.plate("P", 100, 25_000, 0, List.of()));
        refused("-1 mm", () -> ParametricParts.plate("P", 100, 100, -1, List.of()));
        refused("361", () -> ParametricParts.flange("P", 2000, 50, 1500, 361, 5, 0));
        refused("170 mm", () -> ParametricParts.flange("P", 165, 61, 170, 4, 18, 45));
        refused("-3 mm", () -> ParametricParts.flange("P", 165, 61, 125, 4, -3, 45));
        refused("over the outline", () -> ParametricParts.flange("P", 165, 61, 160, 4, 18, 45));
        refused("over each other", () -> ParametricParts.flange("P", 165, 61, 80, 4, 22, 45));
        refused("110 mm", () -> ParametricParts.perforatedPanel("P", 200, 100, Hole.round(0, 0, 5), 8,
                HoleArrangement.SQUARE, 110, 10));
        refused("pitch of 4.0 mm", () -> ParametricParts.perforatedPanel("P", 200, 100, Hole.round(0, 0, 5), 4,
                HoleArrangement.SQUARE, 10, 10));
        refused("60 mm", () -> ParametricParts.notchedBracket("P", 200, 100, 10, 60, 4, List.of()));
        refused("5", () -> ParametricParts.notchedBracket("P", 200, 100, 10, 10, 5, List.of()));
        refused("0 U", () -> ParametricParts.rackPanel("P", 0, List.of()));
        refused("13 U", () -> ParametricParts.rackPanel("P", 13, List.of()));
        refused("60 mm", () -> ParametricParts.busbar("P", 50, 60, List.of()));
        refused("NaN", () -> ParametricParts.busbar("P", Double.NaN, 60, List.of()));
    }
}
