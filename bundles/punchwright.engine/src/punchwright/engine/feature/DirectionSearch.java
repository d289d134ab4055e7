// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.feature;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Flattening;
import punchwright.engine.geometry.Point;

/**
 * Guesses for forms that are so nearly round that their short straight edges do not show as edges: obround, flats, rectangle
 * with large radii. Takes sizes from the extent along many directions and keeps the guesses whose area agrees and that lie
 * nearest.
 */
final class DirectionSearch {

    private static final double STEP_DEG = 7.5;
    private static final double FLATTENING_MM = 0.005;
    private static final int KEPT = 2;
    private static final double CORNER_SHARE = 4 - Math.PI;
    /** A little below half, so that the fit can move the radius both ways. */
    private static final double MOST_RADIUS = 0.485;

    private final List<Point> points;
    private final FormFit fit;
    private final double areaMm2;
    private final double areaSlackMm2;

    /** @param drawn counter-clockwise */
    DirectionSearch(Contour drawn, FormFit fit, double toleranceMm) {
        this.points = Flattening.points(drawn, FLATTENING_MM);
        this.fit = fit;
        this.areaMm2 = drawn.areaMm2();
        this.areaSlackMm2 = 2 * toleranceMm * drawn.lengthMm();
    }

    private record Rated(Match match, double worstMm) {
    }

    /** Kind by kind, the nearest first. */
    List<Match> guesses(double mostMm) {
        List<Match> all = new ArrayList<>();
        for (FeatureKind kind : List.of(FeatureKind.OBROUND, FeatureKind.DOUBLE_FLAT, FeatureKind.SINGLE_FLAT,
                FeatureKind.ROUNDED_RECTANGLE)) {
            List<Rated> rated = new ArrayList<>();
            for (double deg = 0; deg < 360; deg += STEP_DEG) {
                Match guess = guess(kind, deg);
                double worst = guess == null ? Double.POSITIVE_INFINITY : fit.worstMm(guess);
                if (worst < mostMm) {
                    rated.add(new Rated(guess, worst));
                }
            }
            rated.stream().sorted(Comparator.comparingDouble(Rated::worstMm)).limit(KEPT).map(Rated::match).forEach(all::add);
        }
        return all;
    }

    /** Null where the extents make no such form or another area. */
    private Match guess(FeatureKind kind, double deg) {
        Point u = Point.polar(1, Math.toRadians(deg));
        double[] along = extent(u);
        double[] across = extent(u.left());
        double length = along[1] - along[0];
        double width = across[1] - across[0];
        double middle = kind == FeatureKind.SINGLE_FLAT ? across[0] + length / 2 : (across[0] + across[1]) / 2;
        Point center = u.times((along[0] + along[1]) / 2).plus(u.left().times(middle));
        if (width > length) {
            return null;
        }
        double missing = Math.max(0, length * width - areaMm2);
        double radius = switch (kind) {
            case OBROUND -> width / 2;
            case ROUNDED_RECTANGLE -> Math.min(MOST_RADIUS * width, Math.sqrt(missing / CORNER_SHARE));
            default -> 0;
        };
        Match m = new Match(kind, center, deg, length, width, radius);
        Contour ideal = IdealContours.of(m);
        double area = kind == FeatureKind.ROUNDED_RECTANGLE ? Math.max(areaMm2, length * width - CORNER_SHARE * width * width / 4)
                : ideal == null ? 0 : ideal.areaMm2();
        return ideal == null || Math.abs(area - areaMm2) > areaSlackMm2 ? null : m;
    }

    private double[] extent(Point direction) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (Point p : points) {
            double d = p.dot(direction);
            least = Math.min(least, d);
            most = Math.max(most, d);
        }
        return new double[] {least, most};
    }
}
