// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.part;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import punchwright.engine.drawing.LayerRules;
import punchwright.engine.geometry.Arc;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Flattening;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Segment;
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
    public static final double CHORD_ERROR_MM = 0.004;

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
        return outlines(shape, CHORD_ERROR_MM);
    }

    /** Outer contour first, then the openings, with chords that miss the arcs by so much at most. */
    public static List<Outline> outlines(Shape shape, double chordErrorMm) {
        List<Outline> outlines = new ArrayList<>();
        outlines.add(outline(shape.outer(), chordErrorMm));
        shape.holes().forEach(hole -> outlines.add(outline(hole, chordErrorMm)));
        return outlines;
    }

    /** A contour as a polygon. */
    public static Outline outline(Contour contour, double chordErrorMm) {
        return of(Flattening.points(contour, chordErrorMm));
    }

    /** Segments in a row as a polyline from the first start to the last end. */
    public static Outline polyline(List<Segment> segments, double chordErrorMm) {
        List<Point> points = new ArrayList<>();
        points.add(segments.get(0).start());
        for (Segment s : segments) {
            int pieces = s instanceof Arc arc ? Flattening.pieces(arc, chordErrorMm) : 1;
            for (int i = 1; i <= pieces; i++) {
                points.add(s.pointAt((double) i / pieces));
            }
        }
        return of(points);
    }

    private static Outline of(List<Point> points) {
        double[] xy = new double[2 * points.size()];
        for (int k = 0; k < points.size(); k++) {
            xy[2 * k] = points.get(k).x();
            xy[2 * k + 1] = points.get(k).y();
        }
        return new Outline(xy);
    }
}
