// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.ArrayList;
import java.util.List;

import punchwright.engine.geometry.Arc;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Line;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Pose;
import punchwright.engine.geometry.Segment;
import punchwright.engine.press.CutLength;

/**
 * The punch contour of a tool about its axis, at angle 0, counter-clockwise, in mm.
 *
 * <p>Length lies along x. Round: circle. Single flat: circle whose flat is parallel to x on the +y side; double flat: two
 * flats parallel to x. Hexagon: two flats across x. Triangle: one side parallel to x at the bottom, axis in the centroid.
 * Corner radius: a square of side {@code lengthMm} whose four corners are hollowed by arcs of {@code cornerRadiusMm} about the
 * square's corners; one hollow rounds an outer corner of a part when its centre lies on the arc's centre. Cluster: round
 * punches of diameter {@code lengthMm} at the cluster's points (rectangles {@code lengthMm x widthMm} when both differ).
 * Forming tools: the area they mark, a circle or a rectangle.
 */
public final class ToolFootprint {

    private ToolFootprint() {
    }

    /** Punch contours; one but for clusters. */
    public static List<Contour> of(Tool tool) {
        double l = tool.lengthMm();
        double w = tool.widthMm();
        return switch (tool.shape()) {
            case ROUND -> List.of(Contour.circle(Point.ORIGIN, l));
            case SQUARE, RECTANGLE, SLITTING -> List.of(rectangle(l, w, tool.cornerRadiusMm()));
            case OBROUND -> List.of(rectangle(l, w, w / 2));
            case SINGLE_FLAT -> List.of(singleFlat(l, w));
            case DOUBLE_FLAT -> List.of(doubleFlat(l, w));
            case HEXAGON -> List.of(regular(6, l / Math.sqrt(3), Math.PI / 6));
            case TRIANGLE -> List.of(regular(3, l / Math.sqrt(3), Math.PI / 2));
            case CORNER_RADIUS -> List.of(hollowSquare(l, tool.cornerRadiusMm()));
            case CLUSTER -> cluster(tool);
            case FREE_CONTOUR -> List.of(tool.freeContour().oriented(true));
            default -> List.of(Math.abs(l - w) < 1e-9 ? Contour.circle(Point.ORIGIN, l) : rectangle(l, w, 0));
        };
    }

    /** Punch contours where a hit sets them. */
    public static List<Contour> at(Tool tool, PartHit hit) {
        Pose pose = Pose.at(hit.at().x(), hit.at().y(), hit.angleDeg());
        return of(tool).stream().map(c -> c.moved(pose)).toList();
    }

    /** Diameter of the circle about the axis that holds the punch, mm: what a place must take. */
    public static double circumscribedDiameterMm(Tool tool) {
        return 2 * of(tool).stream().flatMap(c -> c.segments().stream()).mapToDouble(ToolFootprint::reach).max().orElseThrow();
    }

    /** Length of the edge that one hit in solid metal cuts, mm; 0 for a forming tool. */
    public static double cutLengthMm(Tool tool) {
        return tool.shape().forms() ? 0 : of(tool).stream().mapToDouble(Contour::lengthMm).sum();
    }

    /** Punched area, mm2. */
    public static double areaMm2(Tool tool) {
        return of(tool).stream().mapToDouble(Contour::areaMm2).sum();
    }

    /** The same cut length from the closed formulas where one exists; a cross-check of the contours. */
    static double cutLengthByFormulaMm(Tool tool) {
        double l = tool.lengthMm();
        double w = tool.widthMm();
        return switch (tool.shape()) {
            case ROUND -> CutLength.roundMm(l);
            case SQUARE, RECTANGLE, SLITTING -> CutLength.rectangleMm(l, w, tool.cornerRadiusMm());
            case OBROUND -> CutLength.obroundMm(l, w);
            case SINGLE_FLAT -> CutLength.singleFlatMm(l, w);
            case DOUBLE_FLAT -> CutLength.doubleFlatMm(l, w);
            case HEXAGON -> CutLength.hexagonMm(l);
            case TRIANGLE -> CutLength.triangleMm(l);
            case CORNER_RADIUS -> CutLength.cornerRadiusMm(l, tool.cornerRadiusMm());
            default -> cutLengthMm(tool);
        };
    }

    /** How often the contour repeats in a full turn: 1 not at all, 2 half turns, 4 quarter turns; 0 at any angle (round). */
    public static int symmetryOrder(Tool tool) {
        return switch (tool.shape()) {
            case ROUND -> 0;
            case SQUARE, CORNER_RADIUS -> 4;
            case RECTANGLE, SLITTING -> Math.abs(tool.lengthMm() - tool.widthMm()) < 1e-9 ? 4 : 2;
            case OBROUND, DOUBLE_FLAT -> 2;
            case HEXAGON -> 6;
            case TRIANGLE -> 3;
            case COLLAR, COUNTERSINK, EMBOSS -> Math.abs(tool.lengthMm() - tool.widthMm()) < 1e-9 ? 0 : 2;
            default -> 1;
        };
    }

    private static double reach(Segment s) {
        double ends = Math.max(s.start().norm(), s.end().norm());
        if (s instanceof Arc arc) {
            boolean far = arc.center().norm() < 1e-12 || arc.spans(arc.center().angleRad());
            return far ? Math.max(ends, arc.center().norm() + arc.radiusMm()) : ends;
        }
        return ends;
    }

    private static Contour rectangle(double l, double w, double r) {
        if (r < 1e-9) {
            return Contour.rectangle(-l / 2, -w / 2, l, w);
        }
        double x = l / 2 - r;
        double y = w / 2 - r;
        Point[] centers = { new Point(x, -y), new Point(x, y), new Point(-x, y), new Point(-x, -y) };
        List<Segment> pieces = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            pieces.add(new Arc(centers[i], r, (i - 1) * Math.PI / 2, Math.PI / 2));
        }
        return joined(pieces);
    }

    /** Puts straight lines between the pieces where their ends do not meet. */
    private static Contour joined(List<Segment> pieces) {
        List<Segment> all = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            Segment next = pieces.get((i + 1) % pieces.size());
            all.add(pieces.get(i));
            if (pieces.get(i).end().distance(next.start()) > 1e-9) {
                all.add(new Line(pieces.get(i).end(), next.start()));
            }
        }
        return new Contour(all);
    }

    private static Contour singleFlat(double d, double h) {
        double start = Math.asin(2 * h / d - 1);
        return joined(List.of(new Arc(Point.ORIGIN, d / 2, Math.PI - start, Math.PI + 2 * start)));
    }

    private static Contour doubleFlat(double d, double h) {
        double half = Math.asin(h / d);
        return joined(List.of(new Arc(Point.ORIGIN, d / 2, -half, 2 * half),
                new Arc(Point.ORIGIN, d / 2, Math.PI - half, 2 * half)));
    }

    private static Contour regular(int corners, double radius, double firstRad) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < corners; i++) {
            points.add(Point.polar(radius, firstRad + i * 2 * Math.PI / corners));
        }
        return Contour.polygon(points);
    }

    private static Contour hollowSquare(double a, double r) {
        double h = a / 2;
        Point[] corners = { new Point(h, -h), new Point(h, h), new Point(-h, h), new Point(-h, -h) };
        List<Segment> pieces = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            pieces.add(new Arc(corners[i], r, Math.PI + i * Math.PI / 2, -Math.PI / 2));
        }
        return joined(pieces);
    }

    private static List<Contour> cluster(Tool tool) {
        boolean round = Math.abs(tool.lengthMm() - tool.widthMm()) < 1e-9;
        Contour one = round ? Contour.circle(Point.ORIGIN, tool.lengthMm())
                : rectangle(tool.lengthMm(), tool.widthMm(), tool.cornerRadiusMm());
        return tool.cluster().stream().map(p -> one.moved(Pose.at(p.x(), p.y(), 0))).toList();
    }
}
