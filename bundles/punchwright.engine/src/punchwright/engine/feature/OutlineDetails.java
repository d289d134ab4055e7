// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.feature;

import java.util.ArrayList;
import java.util.List;

import punchwright.engine.feature.OutlineDetail.Kind;
import punchwright.engine.geometry.Arc;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Line;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Segment;

/**
 * Finds corner radii, chamfers, corner notches and edge notches in the ring of edges by the turns between them: plus to the
 * left (the contour runs counter-clockwise), minus to the right.
 */
final class OutlineDetails {

    private static final double SQUARE_DEG = 1;
    private static final double TANGENT_DEG = 5;
    /** Lines that turn less do not make a corner: where they would meet is far off or nowhere. */
    private static final double CORNER_LEAST_DEG = 15;
    private static final double CHAMFER_LEAST_DEG = 20;
    private static final double CHAMFER_MOST_DEG = 70;

    private final List<Feature> edges;
    private final Contour drawn;
    private final SupportingLines lines;
    private final List<OutlineDetail> found = new ArrayList<>();

    private OutlineDetails(List<Feature> edges, Contour drawn) {
        this.edges = edges;
        this.drawn = drawn;
        this.lines = new SupportingLines(edges.stream().map(f -> f.path().get(0)).toList());
    }

    /**
     * @param edges edge features of an outline, in order, counter-clockwise
     * @param drawn the outline as it is drawn
     */
    static List<OutlineDetail> of(List<Feature> edges, Contour drawn) {
        OutlineDetails details = new OutlineDetails(edges, drawn);
        for (int i = 0; i < edges.size() && edges.size() >= 4; i++) {
            details.cornerRadius(i);
            details.chamfer(i);
            details.cornerNotch(i);
            details.edgeNotch(i);
            details.roundNotch(i);
        }
        return details.found;
    }

    private Segment at(int i) {
        return edges.get(Math.floorMod(i, edges.size())).path().get(0);
    }

    private boolean areLines(int from, int to) {
        for (int i = from; i <= to; i++) {
            if (!(at(i) instanceof Line)) {
                return false;
            }
        }
        return true;
    }

    /** Turn from edge i to the next, degrees, -180 to 180. */
    private double turn(int i) {
        Point a = at(i).tangentAt(1);
        Point b = at(i + 1).tangentAt(0);
        return Math.toDegrees(Math.atan2(a.cross(b), a.dot(b)));
    }

    private boolean turns(int first, int... degrees) {
        for (int k = 0; k < degrees.length; k++) {
            if (Math.abs(turn(first + k) - degrees[k]) > SQUARE_DEG) {
                return false;
            }
        }
        return true;
    }

    private void add(Kind kind, int from, int to, Point place, double length, double depth, double radius) {
        List<Integer> numbers = new ArrayList<>();
        for (int i = from; i <= to; i++) {
            numbers.add(edges.get(Math.floorMod(i, edges.size())).number());
        }
        found.add(new OutlineDetail(kind, numbers, place, length, depth, radius));
    }

    private Line line(int i) {
        return lines.of(Math.floorMod(i, edges.size()));
    }

    /** Where the lines of two straight edges would meet. */
    private Point corner(int i, int j) {
        Point u = line(i).tangentAt(0);
        Point v = line(j).tangentAt(0);
        Point a = line(i).start();
        return a.plus(u.times(line(j).start().minus(a).cross(v) / u.cross(v)));
    }

    private double turnOfLinesDeg(int i, int j) {
        Point u = line(i).tangentAt(0);
        Point v = line(j).tangentAt(0);
        return Math.toDegrees(Math.atan2(u.cross(v), u.dot(v)));
    }

    private void cornerRadius(int i) {
        if (at(i) instanceof Arc arc && at(i - 1) instanceof Line && at(i + 1) instanceof Line && arc.sweepRad() > 0
                && arc.sweepRad() < Math.toRadians(170) && Math.abs(turn(i - 1)) < TANGENT_DEG && Math.abs(turn(i)) < TANGENT_DEG
                && turnOfLinesDeg(i - 1, i + 1) > CORNER_LEAST_DEG) {
            Point corner = corner(i - 1, i + 1);
            add(Kind.CORNER_RADIUS, i, i, corner, 0, 0,
                    new CornerRadiusFit(drawn, arc).radiusMm(corner, line(i - 1), line(i + 1), arc.radiusMm()));
        }
    }

    /** In a regular octagon each side would be one; a side beside another such side is one only when it is shorter. */
    private void chamfer(int i) {
        double length = at(i).lengthMm();
        if (isSlanted(i) && !(isSlanted(i - 1) && at(i - 1).lengthMm() < 1.01 * length)
                && !(isSlanted(i + 1) && at(i + 1).lengthMm() < 1.01 * length)) {
            Point corner = corner(i - 1, i + 1);
            add(Kind.CHAMFER, i, i, corner, corner.distance(at(i).start()), corner.distance(at(i).end()), 0);
        }
    }

    /** A line that turns twice to the left, by a right angle in all. */
    private boolean isSlanted(int i) {
        double before = turn(i - 1);
        double after = turn(i);
        return areLines(i - 1, i + 1) && before > CHAMFER_LEAST_DEG && after > CHAMFER_LEAST_DEG && before < CHAMFER_MOST_DEG
                && after < CHAMFER_MOST_DEG && Math.abs(before + after - 90) < SQUARE_DEG;
    }

    /** Edges i and i + 1 step in and on: the corner between their neighbours is missing. */
    private void cornerNotch(int i) {
        if (areLines(i - 1, i + 2) && turns(i - 1, 90, -90, 90) && at(i).lengthMm() < at(i - 1).lengthMm() + at(i + 1).lengthMm()
                && !isEdgeNotch(i) && !isEdgeNotch(i - 1)) {
            add(Kind.CORNER_NOTCH, i, i + 1, corner(i - 1, i + 2), at(i + 1).lengthMm(), at(i).lengthMm(), 0);
        }
    }

    private boolean isEdgeNotch(int i) {
        return areLines(i - 1, i + 3) && turns(i - 1, 90, -90, -90, 90);
    }

    /** From the line of the edge before a notch to the middle of its bottom. */
    private double depth(int i) {
        return line(i - 1).tangentAt(0).cross(at(i + 1).pointAt(0.5).minus(line(i - 1).start()));
    }

    /** Edges i, i + 1, i + 2 go in, along and out again between two edges of one direction. */
    private void edgeNotch(int i) {
        if (isEdgeNotch(i)) {
            Point mouth = at(i).start().plus(at(i + 2).end()).times(0.5);
            add(Kind.EDGE_NOTCH, i, i + 2, mouth, at(i + 1).lengthMm(), depth(i), 0);
        }
    }

    /** The same with a half circle as its end. */
    private void roundNotch(int i) {
        boolean inAndOut = at(i - 1) instanceof Line && at(i) instanceof Line && at(i + 1) instanceof Arc
                && at(i + 2) instanceof Line
                && at(i + 3) instanceof Line && Math.abs(turn(i - 1) - 90) < SQUARE_DEG && Math.abs(turn(i + 2) - 90) < SQUARE_DEG
                && Math.abs(turn(i)) < TANGENT_DEG && Math.abs(turn(i + 1)) < TANGENT_DEG;
        if (inAndOut && at(i + 1) instanceof Arc arc && Math.abs(Math.toDegrees(arc.sweepRad()) + 180) < TANGENT_DEG) {
            Point mouth = at(i).start().plus(at(i + 2).end()).times(0.5);
            add(Kind.EDGE_NOTCH, i, i + 2, mouth, 2 * arc.radiusMm(), depth(i), arc.radiusMm());
        }
    }
}
