// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import punchwright.engine.drawing.contour.ContourBuilder;
import punchwright.engine.drawing.contour.ContourSet;
import punchwright.engine.drawing.contour.Piece;
import punchwright.engine.finding.FindingCollector;
import punchwright.engine.geometry.InsideTest;
import punchwright.engine.geometry.Shape;

/**
 * Chains the lines on form layers to outlines, layer by layer. Of outlines one in another, as the two circles of a collar,
 * only the outer counts: they are one form.
 */
public final class FormContours {

    private static final double FLATTENING_MM = 0.01;

    private FormContours() {
    }

    /** All forms of a drawing, in the order of their layers in it; lines that are hidden are left out. */
    public static List<FormContour> of(DrawingResult drawing) {
        Map<List<Object>, List<Piece>> layers = new LinkedHashMap<>();
        for (UncutLine line : drawing.uncutLines()) {
            boolean form = line.meaning() == LayerMeaning.FORM_UP || line.meaning() == LayerMeaning.FORM_DOWN;
            if (form && !line.isHidden() && !line.filled() && !line.segments().isEmpty()) {
                layers.computeIfAbsent(List.of(line.meaning(), line.layer()), k -> new ArrayList<>())
                        .add(new Piece(line.segments(), false, true));
            }
        }
        List<FormContour> forms = new ArrayList<>();
        layers.forEach((key, pieces) -> add((LayerMeaning) key.get(0), (String) key.get(1), pieces, forms));
        return forms;
    }

    private static void add(LayerMeaning meaning, String layer, List<Piece> pieces, List<FormContour> forms) {
        ContourSet set = ContourBuilder.build(pieces, DrawingOptions.USUAL_TOLERANCE_MM, new FindingCollector(layer, 1));
        set.shapes().forEach(s -> forms.add(new FormContour(meaning, layer, s.outer().segments(), true)));
        set.openChains().forEach(chain -> forms.add(new FormContour(meaning, layer, chain, false)));
    }

    /** Those whose middle lies inside the outline of a part. */
    public static List<FormContour> within(Shape part, List<FormContour> forms) {
        InsideTest inside = forms.isEmpty() ? null : new InsideTest(part.outer(), FLATTENING_MM);
        return forms.stream().filter(f -> inside.contains(f.bounds().center())).toList();
    }
}
