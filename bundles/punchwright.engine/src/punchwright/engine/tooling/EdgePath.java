// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.List;

import punchwright.engine.feature.Feature;
import punchwright.engine.geometry.Arc;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Segment;
import punchwright.engine.geometry.Shape;

/**
 * The edge of an opening or a piece of the outer contour, with the part's material on the left and the waste on the right.
 *
 * @param segments in order of travel
 * @param closed   whether the last segment runs into the first
 * @param before   what runs into an open path; null when closed or unknown
 * @param after    what follows an open path; null when closed or unknown
 */
record EdgePath(List<Segment> segments, boolean closed, Segment before, Segment after) {

    private static final double JOIN_MM = 0.01;
    private static final double STRAIGHT_DEG = 0.5;

    /** How a cut may behave at an end of a segment. */
    enum End {
        /** Stops at the corner: the waste's corner is convex, material follows. */
        FLUSH,
        /** May run over the corner: the part's corner is convex, waste follows. */
        OVERRUN
    }

    static EdgePath of(Feature feature, Shape shape) {
        List<Segment> path = feature.path();
        Point start = path.getFirst().start();
        Point end = path.getLast().end();
        if (feature.isOpening() || start.distance(end) < JOIN_MM) {
            return new EdgePath(path, true, null, null);
        }
        return new EdgePath(path, false, at(shape.outer(), start, false), at(shape.outer(), end, true));
    }

    private static Segment at(Contour outer, Point p, boolean starting) {
        return outer.segments().stream().filter(s -> p.distance(starting ? s.start() : s.end()) < JOIN_MM).findFirst()
                .orElse(null);
    }

    End startOf(int i) {
        return end(previous(i), segments.get(i), previous(i));
    }

    End endOf(int i) {
        return end(segments.get(i), next(i), next(i));
    }

    /** Whether the path turns where the segment starts; true where nothing is known. */
    boolean sharpStart(int i) {
        return previous(i) == null || Math.abs(turnDeg(previous(i), segments.get(i))) > STRAIGHT_DEG;
    }

    boolean sharpEnd(int i) {
        return next(i) == null || Math.abs(turnDeg(segments.get(i), next(i))) > STRAIGHT_DEG;
    }

    /** How far the path turns at the end of the segment, degrees, positive to the left; 0 where nothing is known. */
    double turnAtEndDeg(int i) {
        return next(i) == null ? 0 : turnDeg(segments.get(i), next(i));
    }

    /** How far the path turns where it begins, degrees, positive to the left; 0 where nothing is known. */
    double turnAtStartDeg() {
        return previous(0) == null ? 0 : turnDeg(previous(0), segments.getFirst());
    }

    private Segment previous(int i) {
        return i > 0 ? segments.get(i - 1) : closed ? segments.getLast() : before;
    }

    private Segment next(int i) {
        return i + 1 < segments.size() ? segments.get(i + 1) : closed ? segments.getFirst() : after;
    }

    /** A left turn leaves waste ahead, a right turn material; running on straight, the neighbour's bend decides. */
    private static End end(Segment in, Segment out, Segment neighbour) {
        if (in == null || out == null) {
            return End.OVERRUN;
        }
        double turnDeg = turnDeg(in, out);
        if (Math.abs(turnDeg) > STRAIGHT_DEG) {
            return turnDeg > 0 ? End.OVERRUN : End.FLUSH;
        }
        return neighbour instanceof Arc arc && arc.sweepRad() < 0 ? End.FLUSH : End.OVERRUN;
    }

    private static double turnDeg(Segment in, Segment out) {
        Point a = in.tangentAt(1);
        Point b = out.tangentAt(0);
        return Math.toDegrees(Math.atan2(a.cross(b), a.dot(b)));
    }
}
