// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.feature;

import java.util.ArrayList;
import java.util.List;

import punchwright.engine.feature.OutlineDetail.Kind;
import punchwright.engine.geometry.Arc;
import punchwright.engine.geometry.Line;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Segment;

/**
 * Finds corner radii, chamfers, corner notches and edge notches in the ring of edges by the turns between them: plus to the
 * left (the contour runs counter-clockwise), minus to the right.
 */
final class OutlineDetails {

    private static final double SQUARE_DEG = 1;
    private static final double TANGENT_DEG = 2;
    private static final double CHAMFER_LEAST_DEG = 20;
    private static final double CHAMFER_MOST_DEG = 70;

    private final List<Feature> edges;
    private final List<OutlineDetail> found = new ArrayList<>();

    private OutlineDetails(List<Feature> edges) {
        this.edges = edges;
    }

    /** @param edges edge features of an outline, in order, counter-clockwise */
    static List<OutlineDetail> of(List<Feature> edges) {
        OutlineDetails details = new OutlineDetails(edges);
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

    /** Where the lines of two edges would meet. */
    private Point corner(int i, int j) {
        Point a = at(i).end();
        Point u = at(i).tangentAt(1);
        Point b = at(j).start();
        Point v = at(j).tangentAt(0);
        return a.plus(u.times(b.minus(a).cross(v) / u.cross(v)));
    }

    private void cornerRadius(int i) {
        if (at(i) instanceof Arc arc && at(i - 1) instanceof Line && at(i + 1) instanceof Line && arc.sweepRad() > 0
                && arc.sweepRad() < Math.toRadians(170) && Math.abs(turn(i - 1)) < TANGENT_DEG && Math.abs(turn(i)) < TANGENT_DEG) {
            add(Kind.CORNER_RADIUS, i, i, corner(i - 1, i + 1), 0, 0, arc.radiusMm());
        }
    }

    private void chamfer(int i) {
        if (!areLines(i - 1, i + 1)) {
            return;
        }
        double before = turn(i - 1);
        double after = turn(i);
        double length = at(i).lengthMm();
        if (before > CHAMFER_LEAST_DEG && after > CHAMFER_LEAST_DEG && before < CHAMFER_MOST_DEG && after < CHAMFER_MOST_DEG
                && Math.abs(before + after - 90) < SQUARE_DEG && length < at(i - 1).lengthMm() && length < at(i + 1).lengthMm()) {
            Point corner = corner(i - 1, i + 1);
            add(Kind.CHAMFER, i, i, corner, corner.distance(at(i).start()), corner.distance(at(i).end()), 0);
        }
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

    /** Edges i, i + 1, i + 2 go in, along and out again between two edges of one direction. */
    private void edgeNotch(int i) {
        if (isEdgeNotch(i)) {
            Point mouth = at(i).start().plus(at(i + 2).end()).times(0.5);
            add(Kind.EDGE_NOTCH, i, i + 2, mouth, at(i + 1).lengthMm(), at(i).lengthMm(), 0);
        }
    }

    /** The same with a half circle as its end. */
    private void roundNotch(int i) {
        boolean inAndOut = at(i - 1) instanceof Line && at(i) instanceof Line && at(i + 1) instanceof Arc && at(i + 2) instanceof Line
                && at(i + 3) instanceof Line && Math.abs(turn(i - 1) - 90) < SQUARE_DEG && Math.abs(turn(i + 2) - 90) < SQUARE_DEG
                && Math.abs(turn(i)) < TANGENT_DEG && Math.abs(turn(i + 1)) < TANGENT_DEG;
        if (inAndOut && at(i + 1) instanceof Arc arc && Math.abs(Math.toDegrees(arc.sweepRad()) + 180) < TANGENT_DEG) {
            Point mouth = at(i).start().plus(at(i + 2).end()).times(0.5);
            add(Kind.EDGE_NOTCH, i, i + 2, mouth, 2 * arc.radiusMm(), at(i).lengthMm() + arc.radiusMm(), arc.radiusMm());
        }
    }
}
