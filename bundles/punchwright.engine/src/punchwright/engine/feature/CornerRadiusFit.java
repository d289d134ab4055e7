// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.feature;

import java.util.ArrayList;
import java.util.List;

import punchwright.engine.geometry.Arc;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Line;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Segment;

/**
 * Radius of an arc that is tangent to two lines, from the drawn points on it: only the radius is free, so noise moves it far
 * less than that of a circle through the same points.
 */
final class CornerRadiusFit {

    private static final int STEPS = 8;
    private static final double NEAR_MM = 0.03;
    private static final double[] SHARES = {0, 0.25, 0.5, 0.75, 1};

    private final List<Point> points = new ArrayList<>();

    CornerRadiusFit(Contour drawn, Arc arc) {
        for (Segment s : drawn.segments()) {
            if (arc.distance(s.start()) < NEAR_MM || arc.distance(s.end()) < NEAR_MM) {
                for (double t : s instanceof Arc ? SHARES : new double[] {0, 1}) {
                    add(arc, s.pointAt(t));
                }
            }
        }
    }

    private void add(Arc arc, Point p) {
        double share = arc.shareNearest(p);
        if (arc.distance(p) < NEAR_MM && share > 0.02 && share < 0.98) {
            points.add(p);
        }
    }

    /**
     * @param corner where the lines meet
     * @param before travelled towards the corner
     * @param after  travelled away from it
     * @param start  radius to begin with, mm; given back when no drawn point tells more
     */
    double radiusMm(Point corner, Line before, Line after, double start) {
        Point u = before.tangentAt(0);
        Point v = after.tangentAt(0);
        double half = Math.atan2(u.cross(v), u.dot(v)) / 2;
        Point arm = v.minus(u).unit();
        double far = 1 / Math.cos(half);
        double r = start;
        for (int step = 0; step < STEPS && !points.isEmpty(); step++) {
            double top = 0;
            double bottom = 0;
            for (Point p : points) {
                Point d = p.minus(corner.plus(arm.times(r * far)));
                double slope = -d.unit().dot(arm) * far - 1;
                top += slope * (d.norm() - r);
                bottom += slope * slope;
            }
            r -= bottom > 0 ? top / bottom : 0;
        }
        return r > 0 && Math.abs(r - start) < 0.1 * start + 0.1 ? r : start;
    }
}
