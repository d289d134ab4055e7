// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.layout;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

import punchwright.engine.geometry.Shape;
import punchwright.planner.layouts.ArrangedSheet;
import punchwright.planner.layouts.Piece;
import punchwright.ui.part.PartShapes;
import punchwright.ui.sheet.Outline;
import punchwright.ui.sheet.Scene;

/** Makes the picture of an arranged sheet: pieces with their numbers. */
final class ArrangedScene {

    private final Map<Shape, List<Outline>> outlines = new IdentityHashMap<>();
    private final Function<String, String> labels;

    /** {@code labels} says what people call the part of an id. */
    ArrangedScene(Function<String, String> labels) {
        this.labels = labels;
    }

    Scene of(ArrangedSheet sheet) {
        List<Scene.Piece> pieces = new ArrayList<>();
        for (int i = 0; i < sheet.pieces().size(); i++) {
            Piece piece = sheet.pieces().get(i);
            pieces.add(Scene.Piece.of(i + 1, label(i + 1, piece), contours(sheet, piece)));
        }
        return new Scene(sheet.sheet().lengthMm(), sheet.sheet().widthMm(), pieces, List.of(), List.of(), List.of(), List.of());
    }

    /** What stands on a piece: its number and what people call its part. */
    String label(int number, Piece piece) {
        return number + " \u00b7 " + labels.apply(piece.partId());
    }

    /** Outer contour and openings of a piece where it lies; none for a part that is not ordered. */
    List<Outline> contours(ArrangedSheet sheet, Piece piece) {
        return sheet.part(piece).map(p -> outlines.computeIfAbsent(p.shape(), PartShapes::outlines)).orElse(List.of()).stream()
                .map(o -> o.placed(piece.angleDeg(), piece.xMm(), piece.yMm())).toList();
    }
}
