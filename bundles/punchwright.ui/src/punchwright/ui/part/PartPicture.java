// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.part;

import java.util.List;
import java.util.Locale;

import punchwright.engine.drawing.LayerRules;
import punchwright.engine.finding.Finding;
import punchwright.engine.geometry.Shape;
import punchwright.model.files.WorkspaceException;
import punchwright.model.files.WorkspacePaths;
import punchwright.model.work.DrawnShape;
import punchwright.model.work.Part;
import punchwright.planner.convert.DrawingStore;
import punchwright.planner.convert.InputException;
import punchwright.planner.convert.PartReader;
import punchwright.planner.intake.DrawingReading;
import punchwright.ui.drawing.DrawingScenes;
import punchwright.ui.sheet.Scene;
import punchwright.ui.text.Texts;

/**
 * What a part looks like.
 *
 * @param scene       the part with what its drawing shows about it; the whole drawing when it gives no part; else empty
 * @param findings    what was noticed in its drawing, by the numbers in the scene
 * @param openings    number of openings
 * @param areaMm2     area of the part
 * @param cutLengthMm length of all edges
 * @param error       why it cannot be read, with the way out; empty when it can
 */
record PartPicture(Scene scene, List<Finding> findings, int openings, double areaMm2, double cutLengthMm, String error) {

    /** Reads a part; may run in the background on a copy that nobody changes. */
    static PartPicture read(Part part, WorkspacePaths paths, LayerRules rules) {
        if (part.getShape() == null) {
            return failed(Scene.EMPTY, List.of(), Texts.of("part.noShape"));
        }
        DrawingStore drawings = new DrawingStore(paths, rules);
        try {
            Shape shape = new PartReader(drawings).shape(part);
            String name = part.getName() == null ? "" : part.getName();
            if (part.getShape() instanceof DrawnShape drawn) {
                List<Finding> findings = drawings.findings(drawn);
                Scene scene = DrawingScenes.ofPart(name, shape, drawings.drawing(drawn, name), findings);
                return new PartPicture(scene, findings, shape.holes().size(), shape.areaMm2(), shape.cutLengthMm(), "");
            }
            return new PartPicture(DrawingScenes.ofShape(name, shape), List.of(), shape.holes().size(), shape.areaMm2(),
                    shape.cutLengthMm(), "");
        } catch (InputException e) {
            return refused(part, paths, rules, e.finding());
        } catch (IllegalArgumentException e) {
            return failed(Scene.EMPTY, List.of(), Texts.of("part.badShape", String.valueOf(e.getMessage())));
        }
    }

    /** What the drawing shows although it gives no part, so that the person sees why. */
    private static PartPicture refused(Part part, WorkspacePaths paths, LayerRules rules, Finding why) {
        String words = why.message(Locale.getDefault()) + " " + why.remedy(Locale.getDefault());
        if (part.getShape() instanceof DrawnShape drawn && drawn.getDrawing() != null) {
            try {
                DrawingReading reading = DrawingReading.of(paths.resolve(drawn.getDrawing()), DrawingStore.options(drawn, rules));
                if (reading.drawing() != null) {
                    return failed(DrawingScenes.of(reading.drawing(), reading.findings()), reading.findings(), words);
                }
            } catch (WorkspaceException e) {
                return failed(Scene.EMPTY, List.of(), words);
            }
        }
        return failed(Scene.EMPTY, List.of(), words);
    }

    private static PartPicture failed(Scene scene, List<Finding> findings, String why) {
        return new PartPicture(scene, findings, 0, 0, 0, why);
    }
}
