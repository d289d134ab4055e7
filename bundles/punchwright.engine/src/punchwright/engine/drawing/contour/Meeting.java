// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.contour;

import java.util.List;

import punchwright.engine.geometry.Arc;
import punchwright.engine.geometry.Intersections;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Segment;

/** Where two segments cross or touch, with the reason to report. */
record Meeting(ContourReason reason, Point place) {

    /** Sine of the angle below which two curves touch instead of cross. */
    private static final double TANGENT = 0.05;

    /** Adds the meetings of two segments; touching counts only between different contours. */
    static void of(Segment s, Segment t, boolean sameContour, double toleranceMm, List<Meeting> found) {
        for (Point p : Intersections.of(s, t, toleranceMm / 2)) {
            boolean crossing = isCrossing(s, t, p, 2 * toleranceMm);
            if (crossing) {
                found.add(new Meeting(sameContour ? ContourReason.SELF_CROSSING : ContourReason.CROSSING, p));
            } else if (!sameContour) {
                found.add(new Meeting(ContourReason.TOUCHING, p));
            }
        }
    }

    private static boolean isCrossing(Segment s, Segment t, Point p, double clear) {
        boolean atEnd = p.distance(s.start()) < clear || p.distance(s.end()) < clear || p.distance(t.start()) < clear
                || p.distance(t.end()) < clear;
        boolean closedCircle = s.start().distance(s.end()) < clear || t.start().distance(t.end()) < clear;
        return (!atEnd || closedCircle) && Math.abs(direction(s, p).cross(direction(t, p))) > TANGENT;
    }

    private static Point direction(Segment s, Point p) {
        return s instanceof Arc arc ? p.minus(arc.center()).unit().left() : s.tangentAt(0);
    }
}
