// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.convert;

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
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Shape;
import punchwright.model.files.Workspace;
import punchwright.model.files.WorkspaceException;
import punchwright.model.files.WorkspacePaths;
import punchwright.model.work.DrawnShape;

/**
 * Drawings of a workspace, each read once in each way: with the layer rules of the shop, or with the unit and rules that a part
 * names.
 */
public final class DrawingStore {

    private final WorkspacePaths paths;
    private final LayerRules shopRules;
    private final Map<Reading, DrawingResult> read = new LinkedHashMap<>();

    /** A drawing, read in one way. */
    private record Reading(String reference, DrawingOptions options) {
    }

    /** Drawings of a workspace, read by the layer rules of its library. */
    public DrawingStore(Workspace workspace) {
        this(workspace.paths(), ShopLayerRules.of(workspace.library()));
    }

    /** Drawings below a folder, read by layer rules that are asked after those of a part. */
    public DrawingStore(WorkspacePaths paths, LayerRules shopRules) {
        this.paths = paths;
        this.shopRules = shopRules;
    }

    /**
     * The one part that a drawing shows.
     *
     * @param reference path relative to the workspace folder
     * @param owner     whose drawing it is, for messages
     * @throws InputException when the drawing cannot be read, lies outside the folder or shows another number of parts
     */
    public Shape shape(String reference, String owner) {
        return only(drawing(new Reading(reference, DrawingOptions.USUAL.withLayerRules(shopRules)), owner), reference, owner);
    }

    private static Shape only(DrawingResult result, String reference, String owner) {
        if (result.shapes().size() != 1) {
            throw new InputException(Finding.of(InputReason.MANY_PARTS_IN_DRAWING, owner, reference, result.shapes().size()));
        }
        return result.shapes().get(0);
    }

    /** The part that a part's drawing shows, with the unit and layers that the part names; the picked one of several. */
    Shape shape(DrawnShape drawn, String owner) {
        DrawingResult result = drawing(reading(drawn), owner);
        if (drawn.getPick() == null) {
            return only(result, drawn.getDrawing(), owner);
        }
        Point place = new Point(drawn.getPick().getXMm(), drawn.getPick().getYMm());
        return PartPick.at(result.shapes(), place).orElseThrow(() -> new InputException(Finding.at(place,
                InputReason.NO_PART_AT_PLACE, owner, drawn.getDrawing(), place.x(), place.y())));
    }

    /**
     * All that a part's drawing shows, also beside the part.
     *
     * @throws InputException when the drawing cannot be read or lies outside the folder
     */
    public DrawingResult drawing(DrawnShape drawn, String owner) {
        return drawing(reading(drawn), owner);
    }

    private Reading reading(DrawnShape drawn) {
        return new Reading(drawn.getDrawing(), options(drawn, shopRules));
    }

    /** How a part's drawing is read: its own rules before those of the shop. */
    public static DrawingOptions options(DrawnShape drawn, LayerRules shopRules) {
        LayerRules rules = shopRules;
        if (!drawn.getLayers().isEmpty()) {
            List<LayerRule> named = drawn.getLayers().stream().map(l -> LayerRule.forLayer(l, LayerMeaning.CUT)).toList();
            rules = new LayerRules(named, LayerMeaning.IGNORE);
        }
        DrawingOptions all = DrawingOptions.USUAL.withLayerRules(ShopLayerRules.before(drawn.getLayerRules(), rules))
                .withHiddenLayers(drawn.isHiddenLayers());
        return switch (drawn.getUnit()) {
            case MM -> all.withUnit(1);
            case INCH -> all.withUnit(25.4);
            default -> all;
        };
    }

    /** What the reader noticed in a part's drawing that was read before. */
    public List<Finding> findings(DrawnShape drawn) {
        DrawingResult result = read.get(reading(drawn));
        return result == null ? List.of() : result.findings();
    }

    private DrawingResult drawing(Reading reading, String owner) {
        DrawingResult known = read.get(reading);
        if (known != null) {
            return known;
        }
        try {
            DrawingResult result = DrawingReader.read(paths.resolve(reading.reference()), reading.options());
            read.put(reading, result);
            return result;
        } catch (WorkspaceException e) {
            throw new InputException(Finding.of(InputReason.DRAWING_OUTSIDE, owner, reading.reference()));
        } catch (DrawingException e) {
            throw new InputException(e.finding());
        }
    }
}
