// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.feature;

import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Line;
import punchwright.engine.geometry.Point;

/** Round with one flat or with two parallel flats at equal distance. */
final class FlatsMatcher implements OpeningMatcher {

    private final double toleranceMm;

    FlatsMatcher(double toleranceMm) {
        this.toleranceMm = toleranceMm;
    }

    @Override
    public Match match(Contour contour) {
        Parts parts = Parts.of(contour);
        if (parts.isTurnOf("LA")) {
            return single(parts);
        }
        return parts.isTurnOf("LALA") && parts.arcs().get(0).center().distance(parts.arcs().get(1).center()) <= 10 * toleranceMm
                ? twice(parts) : null;
    }

    /** The flat runs to -x where it lies above the centre: counter-clockwise travel. */
    private static Match single(Parts parts) {
        Line flat = parts.lines().get(0);
        Point center = parts.meanCenter();
        double height = flat.tangentAt(0).cross(center.minus(flat.start()));
        double angle = Math.toDegrees(flat.tangentAt(0).times(-1).angleRad());
        double d = 2 * parts.meanRadiusMm();
        return new Match(FeatureKind.SINGLE_FLAT, center, angle, d, d / 2 + height, 0);
    }

    private static Match twice(Parts parts) {
        double direction = Parts.commonDirectionRad(parts.lines(), Math.PI);
        Point across = Point.polar(1, direction).left();
        Point between = Parts.middle(parts.lines().get(0)).minus(Parts.middle(parts.lines().get(1)));
        return new Match(FeatureKind.DOUBLE_FLAT, parts.meanCenter(), Math.toDegrees(direction) % 180, 2 * parts.meanRadiusMm(),
                Math.abs(between.dot(across)), 0);
    }
}
