// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.feature;

import java.util.List;

import punchwright.engine.drawing.FormContour;
import punchwright.engine.drawing.LayerMeaning;
import punchwright.engine.geometry.Bounds;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.ContourTidy;

/**
 * Forms that a drawing marks by outlines on layers for forms: place, size and direction as of an opening of the same outline.
 * Which form it is, a drawing does not say; {@link Feature#form()} stays empty until the engineer names it.
 */
final class FormRecognition {

    private FormRecognition() {
    }

    static Feature form(int number, FormContour drawn, OpeningRecognition openings, double joinMm) {
        Bounds box = drawn.bounds();
        Match m = new Match(FeatureKind.FREE_OPENING, box.center(), 0, box.width(), box.height(), 0);
        if (drawn.closed()) {
            Contour outline = new Contour(drawn.path());
            m = openings.recognise(ContourTidy.tidy(outline, joinMm).oriented(true), outline.oriented(true));
        }
        return new Feature(number, FeatureKind.FORM, m.center(), m.angleDeg(), m.lengthMm(), m.widthMm(),
                m.cornerRadiusMm(), null,
                drawn.path(), "", drawn.meaning() == LayerMeaning.FORM_UP ? FormDirection.UP : FormDirection.DOWN);
    }

    static List<Feature> forms(int first, List<FormContour> drawn, OpeningRecognition openings, double joinMm) {
        return java.util.stream.IntStream.range(0, drawn.size()).mapToObj(i -> form(first + i, drawn.get(i), openings, joinMm))
                .toList();
    }
}
