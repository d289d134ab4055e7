// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.part;

import java.util.List;

import punchwright.engine.drawing.LayerRules;
import punchwright.engine.geometry.Shape;
import punchwright.model.files.WorkspacePaths;
import punchwright.model.work.Part;
import punchwright.planner.convert.DrawingStore;
import punchwright.planner.convert.InputException;
import punchwright.planner.convert.PartReader;
import punchwright.ui.sheet.Outline;
import punchwright.ui.text.Texts;

/**
 * What a part looks like.
 *
 * @param contours    outer contour, then openings; empty when it cannot be read
 * @param areaMm2     area of the part
 * @param cutLengthMm length of all edges
 * @param error       why it cannot be read, with the way out; empty when it can
 */
record PartPicture(List<Outline> contours, double areaMm2, double cutLengthMm, String error) {

    /** Reads a part; may run in the background on a copy that nobody changes. */
    static PartPicture read(Part part, WorkspacePaths paths, LayerRules rules) {
        if (part.getShape() == null) {
            return failed(Texts.of("part.noShape"));
        }
        try {
            Shape shape = new PartReader(new DrawingStore(paths, rules)).demand(part, 1).shape();
            return new PartPicture(PartShapes.outlines(shape), shape.areaMm2(), shape.cutLengthMm(), "");
        } catch (InputException e) {
            return failed(e.finding().message() + " " + e.finding().remedy());
        } catch (IllegalArgumentException e) {
            return failed(Texts.of("part.badShape", String.valueOf(e.getMessage())));
        }
    }

    private static PartPicture failed(String why) {
        return new PartPicture(List.of(), 0, 0, why);
    }
}
