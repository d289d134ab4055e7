// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.part;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import punchwright.engine.drawing.LayerRules;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Flattening;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Shape;
import punchwright.model.files.WorkspacePaths;
import punchwright.model.work.Part;
import punchwright.planner.convert.DrawingStore;
import punchwright.planner.convert.InputException;
import punchwright.planner.convert.PartReader;
import punchwright.ui.sheet.Outline;

/** Contours of parts for pictures, each part read once. May be used in the background. */
public final class PartShapes {

    /** Chord error of pictures: this cannot be seen at any scale the window has. */
    private static final double CHORD_ERROR_MM = 0.004;

    private final PartReader reader;
    private final Map<Part, List<Outline>> known = new LinkedHashMap<>();

    /** Shapes of one workspace, whose drawings are read by its layer rules. */
    public PartShapes(WorkspacePaths paths, LayerRules rules) {
        reader = new PartReader(new DrawingStore(paths, rules));
    }

    /** Outer contour first, then the openings; empty when the part cannot be read, which the findings say. */
    public List<Outline> of(Part part) {
        return known.computeIfAbsent(part, p -> {
            try {
                return outlines(reader.demand(p, 1).shape());
            } catch (InputException e) {
                return List.of();
            }
        });
    }

    /** Outer contour first, then the openings. */
    public static List<Outline> outlines(Shape shape) {
        List<Outline> outlines = new ArrayList<>();
        outlines.add(outline(shape.outer()));
        shape.holes().forEach(hole -> outlines.add(outline(hole)));
        return outlines;
    }

    private static Outline outline(Contour contour) {
        List<Point> points = Flattening.points(contour, CHORD_ERROR_MM);
        double[] xy = new double[2 * points.size()];
        for (int k = 0; k < points.size(); k++) {
            xy[2 * k] = points.get(k).x();
            xy[2 * k + 1] = points.get(k).y();
        }
        return new Outline(xy);
    }
}
