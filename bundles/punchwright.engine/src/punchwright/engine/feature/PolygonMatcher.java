// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.feature;

import java.util.List;

import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Line;
import punchwright.engine.geometry.Point;

/** Square, rectangle, hexagon and equilateral triangle from their sides. */
final class PolygonMatcher implements OpeningMatcher {

    private final double toleranceMm;

    PolygonMatcher(double toleranceMm) {
        this.toleranceMm = toleranceMm;
    }

    @Override
    public Match match(Contour contour) {
        Parts parts = Parts.of(contour);
        return switch (parts.pattern()) {
            case "LLL" -> triangle(parts.lines());
            case "LLLL" -> rectangle(parts.lines());
            case "LLLLLL" -> hexagon(parts.lines());
            default -> null;
        };
    }

    private Match rectangle(List<Line> sides) {
        double direction = Parts.commonDirectionRad(sides, Math.PI / 2);
        Match m = SideDistances.rectangle(FeatureKind.RECTANGLE, sides, direction, 0);
        boolean square = Math.abs(m.lengthMm() - m.widthMm()) <= toleranceMm;
        double side = (m.lengthMm() + m.widthMm()) / 2;
        return square ? new Match(FeatureKind.SQUARE, m.center(), m.angleDeg() % 90, side, side, 0) : m;
    }

    private static Match hexagon(List<Line> sides) {
        Point center = centroid(sides);
        double across = sides.stream().mapToDouble(s -> 2 * distance(s, center)).average().orElseThrow();
        double direction = Parts.commonDirectionRad(sides, Math.PI / 3);
        return new Match(FeatureKind.HEXAGON, center, (Math.toDegrees(direction) + 30) % 60, across, across, 0);
    }

    private static Match triangle(List<Line> sides) {
        Point center = centroid(sides);
        double side = sides.stream().mapToDouble(Line::lengthMm).average().orElseThrow();
        double direction = Parts.commonDirectionRad(sides, 2 * Math.PI / 3);
        return new Match(FeatureKind.TRIANGLE, center, Math.toDegrees(direction), side, side, 0);
    }

    private static Point centroid(List<Line> sides) {
        Point sum = Point.ORIGIN;
        for (Line s : sides) {
            sum = sum.plus(s.start());
        }
        return sum.times(1.0 / sides.size());
    }

    private static double distance(Line side, Point center) {
        return Math.abs(side.tangentAt(0).cross(center.minus(side.start())));
    }
}
