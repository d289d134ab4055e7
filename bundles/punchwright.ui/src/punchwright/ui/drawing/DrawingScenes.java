// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.drawing;

import java.util.ArrayList;
import java.util.List;

import punchwright.engine.drawing.DrawingResult;
import punchwright.engine.drawing.LayerMeaning;
import punchwright.engine.drawing.PartCounting;
import punchwright.engine.drawing.PartGroup;
import punchwright.engine.drawing.UncutLine;
import punchwright.engine.finding.Finding;
import punchwright.engine.geometry.Bounds;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.InteriorPoint;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Segment;
import punchwright.engine.geometry.Shape;
import punchwright.planner.convert.PartPick;
import punchwright.ui.part.PartShapes;
import punchwright.ui.sheet.DrawnLines;
import punchwright.ui.sheet.DrawnLines.Stroke;
import punchwright.ui.sheet.LineKind;
import punchwright.ui.sheet.Outline;
import punchwright.ui.sheet.Scene;

/** The picture of a drawing as it was read. May be made in the background. */
public final class DrawingScenes {

    /** A chord may miss its arc by this share of the drawing's size, but by no more than that of a part's own picture. */
    private static final double CHORD_SHARE = 1 / 40000.0;
    private static final double MOST_CHORD_ERROR_MM = 0.05;

    private DrawingScenes() {
    }

    /** All that a drawing shows: parts numbered as they are counted, other lines, texts, and the places of the findings. */
    public static Scene of(DrawingResult drawing, List<Finding> findings) {
        double chord = chordErrorMm(drawing);
        return Scene.ofDrawing(pieces(drawing, chord), marks(findings), lines(drawing, chord));
    }

    private static double chordErrorMm(DrawingResult drawing) {
        Bounds box = Bounds.EMPTY;
        for (Contour loop : drawing.loops()) {
            box = box.including(loop.bounds());
        }
        double size = box.isEmpty() ? 0 : Math.max(box.width(), box.height());
        return Math.max(PartShapes.CHORD_ERROR_MM, Math.min(MOST_CHORD_ERROR_MM, size * CHORD_SHARE));
    }

    private static List<Scene.Piece> pieces(DrawingResult drawing, double chord) {
        List<Scene.Piece> pieces = new ArrayList<>();
        int number = 0;
        for (PartGroup group : PartCounting.groups(drawing.shapes())) {
            number++;
            for (PartGroup.Copy copy : group.copies()) {
                Shape shape = drawing.shapes().get(copy.position());
                Point label = label(shape);
                pieces.add(Scene.Piece.labelled(number, Integer.toString(number), PartShapes.outlines(shape, chord), label.x(),
                        label.y()));
            }
        }
        return pieces;
    }

    /** A place well inside the outline, away from its edges, when it does not lie in an opening. */
    private static Point label(Shape shape) {
        Point inside = InteriorPoint.of(shape.outer());
        return PartPick.at(List.of(shape), inside).isPresent() ? inside : PartPick.inside(shape);
    }

    /** Findings with a place, by their number in the table, which counts from 1. */
    static List<Scene.Mark> marks(List<Finding> findings) {
        List<Scene.Mark> marks = new ArrayList<>();
        for (int i = 0; i < findings.size(); i++) {
            Finding finding = findings.get(i);
            int number = i + 1;
            finding.placeIfAny().ifPresent(p -> marks.add(new Scene.Mark(p.x(), p.y(), Severities.rank(finding), number)));
        }
        return marks;
    }

    /** Everything beside the edges of parts. */
    static DrawnLines lines(DrawingResult drawing, double chord) {
        List<Stroke> strokes = new ArrayList<>();
        drawing.openChains().forEach(chain -> add(strokes, LineKind.OPEN, chain, chord));
        if (drawing.shapes().isEmpty()) {
            drawing.loops().forEach(loop -> strokes.add(Stroke.of(LineKind.LOOSE, PartShapes.outline(loop, chord), true)));
        }
        drawing.uncutLines().forEach(line -> add(strokes, kind(line), line.segments(), chord));
        List<DrawnLines.Note> notes = drawing.texts().stream().filter(t -> !t.text().isBlank())
                .map(t -> new DrawnLines.Note(t.place().x(),
                t.place().y(), t.heightMm(), t.angleDeg(), t.text())).toList();
        return new DrawnLines(strokes, notes, drawing.centreMarks().stream().map(c -> new DrawnLines.Centre(c.place().x(),
                c.place().y()))
                .toList());
    }

    private static void add(List<Stroke> strokes, LineKind kind, List<Segment> segments, double chord) {
        if (!segments.isEmpty()) {
            strokes.add(Stroke.of(kind, PartShapes.polyline(segments, chord), false));
        }
    }

    /** What an uncut line looks like: that it is hidden or filled matters more than what its layer means. */
    static LineKind kind(UncutLine line) {
        if (line.isHidden()) {
            return LineKind.HIDDEN;
        }
        if (line.filled() && line.meaning() == LayerMeaning.CUT) {
            return LineKind.FILLED;
        }
        return switch (line.meaning()) {
            case MARK -> LineKind.MARK;
            case FORM_UP -> LineKind.FORM_UP;
            case FORM_DOWN -> LineKind.FORM_DOWN;
            case BEND_LINE -> LineKind.BEND_LINE;
            case CUT, IGNORE -> LineKind.IGNORE;
        };
    }

    /** The outline of one shape only, with the lines of its drawing that lie within its box. */
    public static Scene ofPart(String name, Shape shape, DrawingResult drawing, List<Finding> findings) {
        Bounds box = shape.bounds();
        DrawnLines all = lines(drawing, PartShapes.CHORD_ERROR_MM);
        DrawnLines near = new DrawnLines(all.strokes().stream().filter(s -> meets(box, s.box())).toList(),
                all.notes().stream().filter(n -> holds(box, n.x(), n.y())).toList(),
                all.centres().stream().filter(c -> holds(box, c.x(), c.y())).toList());
        List<Scene.Mark> marks = marks(findings).stream().filter(m -> holds(box, m.x(), m.y())).toList();
        return Scene.ofDrawing(List.of(Scene.Piece.of(1, name, PartShapes.outlines(shape))), marks, near);
    }

    private static boolean holds(Bounds box, double x, double y) {
        double room = 0.1 * Math.max(box.width(), box.height());
        return x >= box.minX() - room && x <= box.maxX() + room && y >= box.minY() - room && y <= box.maxY() + room;
    }

    private static boolean meets(Bounds box, double[] other) {
        return other[2] >= box.minX() && other[0] <= box.maxX() && other[3] >= box.minY() && other[1] <= box.maxY();
    }

    /** A scene with a shape alone, for parts that are given by values. */
    public static Scene ofShape(String name, Shape shape) {
        return Scene.ofDrawing(List.of(Scene.Piece.of(1, name, PartShapes.outlines(shape))), List.of(), DrawnLines.NONE);
    }
}
