// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.feature;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Test;

import punchwright.engine.drawing.DrawingException;
import punchwright.engine.drawing.DrawingOptions;
import punchwright.engine.drawing.DrawingReader;
import punchwright.engine.drawing.DrawingResult;
import punchwright.engine.drawing.DxfWriter;
import punchwright.engine.drawing.FormContour;
import punchwright.engine.drawing.FormContours;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Openings;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Pose;

/** Forms that a drawing marks on layers of their own become features with size, angle and direction. */
class DrawnFormsTest {

    private static DrawingResult read(Map<String, List<Contour>> layers) throws DrawingException, IOException {
        StringWriter text = new StringWriter();
        DxfWriter.writeLayers(layers, text);
        return DrawingReader.read(new ByteArrayInputStream(text.toString().getBytes(StandardCharsets.US_ASCII)), "forms",
                DrawingOptions.USUAL);
    }

    private static FeatureSet features(DrawingResult drawing, int part) {
        List<FormContour> forms = FormContours.within(drawing.shapes().get(part), FormContours.of(drawing));
        return FeatureRecognition.recognise("part", drawing.shapes().get(part), forms);
    }

    @Test
    void circleAndRectangleWithDirection() throws DrawingException, IOException {
        Map<String, List<Contour>> layers = new LinkedHashMap<>();
        layers.put("CUT", List.of(Contour.rectangle(0, 0, 200, 100), Contour.circle(new Point(20, 20), 8)));
        layers.put("FORM_UP", List.of(Contour.circle(new Point(60, 50), 24), Contour.circle(new Point(60, 50), 12)));
        layers.put("FORM_DOWN", List.of(Openings.rectangle(60, 6, 0).moved(Pose.at(140, 50, 30))));
        FeatureSet set = features(read(layers), 0);
        List<Feature> forms = set.features().stream().filter(f -> f.kind() == FeatureKind.FORM).toList();
        assertEquals(2, forms.size());
        Feature round = forms.get(0);
        assertEquals(FormDirection.UP, round.direction());
        assertEquals(24, round.lengthMm(), 1e-9);
        assertEquals(24, round.widthMm(), 1e-9);
        assertEquals(0, round.center().distance(new Point(60, 50)), 1e-9);
        Feature louvre = forms.get(1);
        assertEquals(FormDirection.DOWN, louvre.direction());
        assertEquals(60, louvre.lengthMm(), 1e-6);
        assertEquals(6, louvre.widthMm(), 1e-6);
        assertEquals(30, louvre.angleDeg(), 1e-6);
        for (Feature f : forms) {
            assertTrue(!f.isOpening() && f.form().isEmpty() && !f.path().isEmpty());
        }
        assertEquals(List.of(1, 2, 3, 4, 5, 6, 7), set.features().stream().map(Feature::number).toList());
    }

    @Test
    void formsGoToThePartTheyLieIn() throws DrawingException, IOException {
        Map<String, List<Contour>> layers = new LinkedHashMap<>();
        layers.put("CUT", List.of(Contour.rectangle(0, 0, 50, 50), Contour.rectangle(100, 0, 50, 50)));
        layers.put("FORM_DOWN", List.of(Contour.circle(new Point(120, 25), 10)));
        DrawingResult drawing = read(layers);
        assertEquals(2, drawing.shapes().size());
        long[] found = {0, 0};
        for (int i = 0; i < 2; i++) {
            found[drawing.shapes().get(i).bounds().minX() < 50 ? 0 : 1] =
                    features(drawing, i).features().stream().filter(f -> f.kind() == FeatureKind.FORM).count();
        }
        assertEquals(0, found[0]);
        assertEquals(1, found[1]);
    }

    @Test
    void withoutFormLayersNothingChanges() throws DrawingException, IOException {
        Map<String, List<Contour>> layers = new LinkedHashMap<>();
        layers.put("CUT", List.of(Contour.rectangle(0, 0, 50, 50)));
        layers.put("BEND", List.of(Contour.circle(new Point(25, 25), 10)));
        assertTrue(features(read(layers), 0).features().stream().noneMatch(f -> f.kind() == FeatureKind.FORM));
    }
}
