// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.feature;

import java.util.ArrayList;
import java.util.List;

import punchwright.engine.geometry.Arc;
import punchwright.engine.geometry.CircleFit;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Segment;

/**
 * Full circle, from the contour as it is drawn: a circle, arcs of one circle, or a polygon of many short sides. Corners and
 * points of arcs must lie on it within the tolerance, and so must the middles of the sides, which therefore are many.
 */
final class RoundMatcher {

    private static final double[] SHARES = {0, 0.25, 0.5, 0.75};
    /** Fewer sides are a polygon, however small it is. */
    private static final int LEAST_SIDES = 9;

    private RoundMatcher() {
    }

    /** Null when the contour is no circle. */
    static Match match(Contour drawn, double toleranceMm) {
        double exact = drawn.circleDiameterMm(1e-9);
        if (exact > 0) {
            return round(((Arc) drawn.segments().get(0)).center(), exact);
        }
        boolean anyArc = drawn.segments().stream().anyMatch(Arc.class::isInstance);
        CircleFit fit = !anyArc && drawn.segments().size() < LEAST_SIDES ? null : CircleFit.of(onCurve(drawn));
        return fit == null || !lies(drawn, fit, toleranceMm) ? null : round(fit.center(), 2 * fit.radiusMm());
    }

    private static Match round(Point center, double diameterMm) {
        return new Match(FeatureKind.ROUND, center, 0, diameterMm, diameterMm, 0);
    }

    private static List<Point> onCurve(Contour drawn) {
        List<Point> points = new ArrayList<>();
        for (Segment s : drawn.segments()) {
            points.add(s.start());
            for (int i = 1; i < SHARES.length && s instanceof Arc; i++) {
                points.add(s.pointAt(SHARES[i]));
            }
        }
        return points;
    }

    private static boolean lies(Contour drawn, CircleFit fit, double toleranceMm) {
        double turn = 0;
        for (Segment s : drawn.segments()) {
            for (double t : SHARES) {
                if (fit.distance(s.pointAt(t)) > toleranceMm) {
                    return false;
                }
            }
            turn += turn(s, fit.center());
        }
        return Math.abs(Math.abs(turn) - 2 * Math.PI) < 0.1;
    }

    /** Angle travelled about the centre, in quarters so that large arcs count in full. */
    private static double turn(Segment s, Point center) {
        double sum = 0;
        for (double t : SHARES) {
            Point a = s.pointAt(t).minus(center);
            Point b = s.pointAt(t + 0.25).minus(center);
            sum += Math.atan2(a.cross(b), a.dot(b));
        }
        return sum;
    }
}
