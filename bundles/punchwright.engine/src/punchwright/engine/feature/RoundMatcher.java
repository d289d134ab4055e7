// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.feature;

import punchwright.engine.geometry.Contour;

/** Full circle. */
final class RoundMatcher implements OpeningMatcher {

    private final double toleranceMm;

    RoundMatcher(double toleranceMm) {
        this.toleranceMm = toleranceMm;
    }

    @Override
    public Match match(Contour contour) {
        double d = contour.circleDiameterMm(toleranceMm);
        return d > 0 ? new Match(FeatureKind.ROUND, Parts.of(contour).meanCenter(), 0, d, d, 0) : null;
    }
}
