// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.feature;

import java.util.List;

import punchwright.engine.geometry.Arc;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Line;
import punchwright.engine.geometry.Point;

/** Rectangle with equal corner radii, and the obround, whose ends are half circles. */
final class RoundedMatcher implements OpeningMatcher {

    @Override
    public Match match(Contour contour) {
        Parts parts = Parts.of(contour);
        if (parts.isTurnOf("LALALALA")) {
            double direction = Parts.commonDirectionRad(parts.lines(), Math.PI / 2);
            return SideDistances.rectangle(FeatureKind.ROUNDED_RECTANGLE, parts.lines(), direction, parts.meanRadiusMm());
        }
        return parts.isTurnOf("LALA") ? obround(parts) : parts.isTurnOf("LAALAA") ? obroundOfQuarters(parts) : null;
    }

    private static Match obround(Parts parts) {
        Point a = parts.arcs().get(0).center();
        Point b = parts.arcs().get(1).center();
        return obround(a, b, parts.lines(), parts.meanRadiusMm());
    }

    private static Match obroundOfQuarters(Parts parts) {
        List<Arc> arcs = parts.arcs();
        Arc first = arcs.get(0);
        List<Point> near = arcs.stream().map(Arc::center).filter(c -> c.distance(first.center()) < first.radiusMm() / 2).toList();
        List<Point> far = arcs.stream().map(Arc::center).filter(c -> c.distance(first.center()) >= first.radiusMm() / 2).toList();
        return near.size() != 2 || far.size() != 2 ? null
                : obround(mean(near), mean(far), parts.lines(), parts.meanRadiusMm());
    }

    private static Point mean(List<Point> two) {
        return two.get(0).plus(two.get(1)).times(0.5);
    }

    private static Match obround(Point a, Point b, List<Line> sides, double radius) {
        Point center = a.plus(b).times(0.5);
        double direction = Parts.commonDirectionRad(sides, Math.PI);
        Point across = Point.polar(1, direction).left();
        double width = Math.abs(Parts.middle(sides.get(0)).minus(Parts.middle(sides.get(1))).dot(across));
        return new Match(FeatureKind.OBROUND, center, Math.toDegrees(direction) % 180, a.distance(b) + 2 * radius, width,
                width / 2);
    }
}
