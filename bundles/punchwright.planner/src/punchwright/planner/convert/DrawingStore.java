// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.convert;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import punchwright.engine.drawing.DrawingException;
import punchwright.engine.drawing.DrawingOptions;
import punchwright.engine.drawing.DrawingReader;
import punchwright.engine.drawing.DrawingResult;
import punchwright.engine.drawing.LayerMeaning;
import punchwright.engine.drawing.LayerRule;
import punchwright.engine.drawing.LayerRules;
import punchwright.engine.finding.Finding;
import punchwright.engine.geometry.Shape;
import punchwright.model.files.WorkspaceException;
import punchwright.model.files.WorkspacePaths;
import punchwright.model.work.DrawnShape;

/** Drawings of a workspace, each read once. */
public final class DrawingStore {

    private final WorkspacePaths paths;
    private final Map<String, DrawingResult> read = new LinkedHashMap<>();
    private final Map<String, DrawingOptions> options = new LinkedHashMap<>();

    public DrawingStore(WorkspacePaths paths) {
        this.paths = paths;
    }

    /**
     * The one part that a drawing shows.
     *
     * @param reference path relative to the workspace folder
     * @param owner     whose drawing it is, for messages
     * @throws InputException when the drawing cannot be read, lies outside the folder or shows another number of parts
     */
    public Shape shape(String reference, String owner) {
        DrawingResult result = drawing(reference, owner);
        if (result.shapes().size() != 1) {
            throw new InputException(Finding.of(InputReason.MANY_PARTS_IN_DRAWING, owner, reference,
                    result.shapes().size()));
        }
        return result.shapes().get(0);
    }

    /** The one part that a part's drawing shows, with the unit and layers that the part names. */
    Shape shape(DrawnShape drawn, String owner) {
        options.put(drawn.getDrawing(), options(drawn));
        return shape(drawn.getDrawing(), owner);
    }

    private static DrawingOptions options(DrawnShape drawn) {
        DrawingOptions usual = DrawingOptions.USUAL;
        if (!drawn.getLayers().isEmpty()) {
            List<LayerRule> named = drawn.getLayers().stream().map(l -> LayerRule.forLayer(l, LayerMeaning.CUT)).toList();
            usual = usual.withLayerRules(new LayerRules(named, LayerMeaning.IGNORE));
        }
        return switch (drawn.getUnit()) {
            case MM -> usual.withUnit(1);
            case INCH -> usual.withUnit(25.4);
            default -> usual;
        };
    }

    /** What the reader noticed in a drawing that was read before. */
    public List<Finding> findings(String reference) {
        DrawingResult result = read.get(reference);
        return result == null ? List.of() : result.findings();
    }

    private DrawingResult drawing(String reference, String owner) {
        DrawingResult known = read.get(reference);
        if (known != null) {
            return known;
        }
        try {
            Path file = paths.resolve(reference);
            DrawingResult result = DrawingReader.read(file, options.getOrDefault(reference, DrawingOptions.USUAL));
            read.put(reference, result);
            return result;
        } catch (WorkspaceException e) {
            throw new InputException(Finding.of(InputReason.DRAWING_OUTSIDE, owner, reference));
        } catch (DrawingException e) {
            throw new InputException(e.finding());
        }
    }
}
