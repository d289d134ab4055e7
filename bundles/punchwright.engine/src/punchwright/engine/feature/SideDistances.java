// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.feature;

import java.util.List;

import punchwright.engine.geometry.Line;
import punchwright.engine.geometry.Point;

/** Sizes of a rectangle from its sides: where each side lies on the average, across the common direction. */
final class SideDistances {

    private SideDistances() {
    }

    /** Length along the longer side, angle from 0 to below 180 degrees. All four directions of sides must occur. */
    static Match rectangle(FeatureKind kind, List<Line> sides, double directionRad, double cornerRadiusMm) {
        Point u = Point.polar(1, directionRad);
        Point v = u.left();
        double right = position(sides, u, v, 1);
        double left = position(sides, u, v, -1);
        double top = position(sides, v, u.times(-1), 1);
        double bottom = position(sides, v, u.times(-1), -1);
        Point center = u.times((right + left) / 2).plus(v.times((top + bottom) / 2));
        double alongU = right - left;
        double alongV = top - bottom;
        double angle = Math.toDegrees(directionRad);
        return alongU >= alongV ? new Match(kind, center, angle % 180, alongU, alongV, cornerRadiusMm)
                : new Match(kind, center, (angle + 90) % 180, alongV, alongU, cornerRadiusMm);
    }

    /** Mean position along {@code normal} of the sides that run along {@code sign} times {@code travel}. */
    private static double position(List<Line> sides, Point normal, Point travel, int sign) {
        double sum = 0;
        int n = 0;
        for (Line s : sides) {
            if (s.tangentAt(0).dot(travel) * sign > 0.7) {
                sum += Parts.middle(s).dot(normal);
                n++;
            }
        }
        return sum / n;
    }
}
