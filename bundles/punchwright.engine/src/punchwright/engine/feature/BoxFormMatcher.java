// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.feature;

import java.util.Comparator;

import punchwright.engine.geometry.Bounds;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Line;
import punchwright.engine.geometry.Pose;

/**
 * Rectangle with radii and obround from extent and area alone, for contours whose pieces did not fall into four sides and
 * four corners: r follows from {@code area = length width - (4 - pi) r^2}. Needs one side to know the direction.
 */
final class BoxFormMatcher implements OpeningMatcher {

    private static final double CORNER_SHARE = 4 - Math.PI;
    /** A radius this close to half the width makes an obround. */
    private static final double OBROUND_SHARE = 0.005;

    @Override
    public Match match(Contour contour) {
        Line longest = Parts.of(contour).lines().stream().max(Comparator.comparingDouble(Line::lengthMm)).orElse(null);
        if (longest == null || contour.segments().size() < 4) {
            return null;
        }
        double direction = Math.toDegrees(longest.end().minus(longest.start()).angleRad());
        Bounds box = contour.moved(Pose.at(0, 0, -direction)).bounds();
        double length = Math.max(box.width(), box.height());
        double width = Math.min(box.width(), box.height());
        double missing = length * width - contour.areaMm2();
        double radius = Math.sqrt(Math.max(0, missing / CORNER_SHARE));
        if (radius < 0.02 * width || radius > 0.52 * width) {
            return null;
        }
        boolean obround = radius > width * (0.5 - OBROUND_SHARE);
        return new Match(obround ? FeatureKind.OBROUND : FeatureKind.ROUNDED_RECTANGLE, Pose.at(0, 0, direction)
                .apply(box.center()),
                box.width() >= box.height() ? direction : direction + 90, length, width, obround ? width / 2 : radius);
    }
}
