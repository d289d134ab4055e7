// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.drawing;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import punchwright.engine.drawing.DrawingResult;
import punchwright.engine.drawing.DrawnText;
import punchwright.model.shop.Material;
import punchwright.planner.intake.NoteReading;
import punchwright.ui.text.Numbers;
import punchwright.ui.text.Texts;

/**
 * What the notes of a drawing say of its parts, as an offer.
 *
 * @param material    null when nothing is said
 * @param thicknessMm empty when nothing is said
 * @param quantity    empty when nothing is said
 */
record NotesSaid(Material material, OptionalDouble thicknessMm, OptionalInt quantity) {

    static final NotesSaid NOTHING = new NotesSaid(null, OptionalDouble.empty(), OptionalInt.empty());

    static NotesSaid of(DrawingResult drawing, List<Material> materials) {
        if (drawing == null || drawing.texts().isEmpty()) {
            return NOTHING;
        }
        List<String> notes = drawing.texts().stream().map(DrawnText::text).toList();
        return new NotesSaid(NoteReading.material(notes, materials).orElse(null), NoteReading.thicknessMm(notes),
                NoteReading.quantity(notes));
    }

    boolean isEmpty() {
        return material == null && thicknessMm.isEmpty() && quantity.isEmpty();
    }

    /** In words. */
    String text() {
        return Stream.of(material == null ? "" : material.getName(),
                thicknessMm.isPresent() ? Texts.of("intake.mm", Numbers.plain(thicknessMm.getAsDouble())) : "",
                quantity.isPresent() ? Texts.of("intake.pieces", quantity.getAsInt()) : "").filter(t -> !t.isEmpty())
                .collect(Collectors.joining(", "));
    }
}
