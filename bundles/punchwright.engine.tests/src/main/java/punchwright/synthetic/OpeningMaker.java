// SPDX-License-Identifier: EPL-2.0
package punchwright.synthetic;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import punchwright.engine.feature.FeatureKind;
import punchwright.engine.geometry.Point;

/**
 * Openings of random sizes. Margins between kinds, each wider than what noise of 0.005 mm at two opposite edges and the
 * tolerance of 0.02 mm of the recognition can bridge: a rectangle is 0.08 mm longer than wide; a rounded corner has a
 * radius of 0.3 mm at least; between two rounded corners 0.2 mm stay straight, since with f mm straight the rectangle is
 * within 0.21 f of an obround; an obround is 0.2 mm longer than wide (within 1/4 of that of a round); a flat cuts off 0.15 mm;
 * the centre line of a slot rises by 0.12 mm over its chord.
 */
final class OpeningMaker {

    static final List<FeatureKind> KINDS = List.of(FeatureKind.ROUND, FeatureKind.SQUARE, FeatureKind.RECTANGLE,
            FeatureKind.ROUNDED_RECTANGLE, FeatureKind.OBROUND, FeatureKind.SINGLE_FLAT, FeatureKind.DOUBLE_FLAT,
            FeatureKind.HEXAGON, FeatureKind.TRIANGLE, FeatureKind.KEYHOLE, FeatureKind.ARC_SLOT, FeatureKind.FREE_OPENING);
    private static final double LEAST_MM = 2;

    private final Random random;

    OpeningMaker(Random random) {
        this.random = random;
    }

    double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    /** Often near the low end, sometimes far from it: the hard cases are those beside a margin. */
    private double above(double low, double high) {
        return random.nextInt(3) == 0 ? between(low, Math.min(high, 2 * low)) : between(low, high);
    }

    /** About the origin, no point farther from it than {@code reachMm}. */
    TrueOpening make(FeatureKind kind, double reachMm) {
        double most = 2 * reachMm;
        return switch (kind) {
            case ROUND -> round(between(LEAST_MM, most));
            case SQUARE -> square(between(LEAST_MM, most * 0.7));
            case RECTANGLE -> rectangle(between(LEAST_MM, most * 0.6), most * 0.75);
            case ROUNDED_RECTANGLE -> rounded(between(LEAST_MM, most * 0.6), most * 0.75);
            case OBROUND -> obround(between(LEAST_MM, most * 0.6), most);
            case SINGLE_FLAT -> singleFlat(between(LEAST_MM, most));
            case DOUBLE_FLAT -> doubleFlat(between(LEAST_MM, most));
            case HEXAGON -> hexagon(between(LEAST_MM, most * 0.85));
            case TRIANGLE -> triangle(between(LEAST_MM, most * 0.85));
            case KEYHOLE -> keyhole(between(LEAST_MM, most * 0.4));
            case ARC_SLOT -> arcSlot(between(LEAST_MM, most * 0.25), most);
            default -> free(between(0.3, 0.95) * reachMm);
        };
    }

    private static TrueOpening of(FeatureKind kind, double l, double w, double r, List<Curve> exact) {
        return new TrueOpening(kind, Point.ORIGIN, 0, l, w, r, exact);
    }

    private TrueOpening round(double d) {
        return of(FeatureKind.ROUND, d, d, 0, OpeningForms.round(d));
    }

    private TrueOpening square(double side) {
        return of(FeatureKind.SQUARE, side, side, 0, OpeningForms.rectangle(side, side));
    }

    private TrueOpening rectangle(double w, double most) {
        double l = w + above(0.08, most - w);
        return of(FeatureKind.RECTANGLE, l, w, 0, OpeningForms.rectangle(l, w));
    }

    private TrueOpening rounded(double w, double most) {
        double l = random.nextInt(8) == 0 ? w : w + above(0.08, most - w);
        double straight = above(0.2, w - 0.6);
        double r = (w - straight) / 2;
        return of(FeatureKind.ROUNDED_RECTANGLE, l, w, r, OpeningForms.roundedRectangle(l, w, r));
    }

    private TrueOpening obround(double w, double most) {
        double l = w + above(0.2, most - w);
        return of(FeatureKind.OBROUND, l, w, w / 2, OpeningForms.obround(l, w));
    }

    private TrueOpening singleFlat(double d) {
        double h = d - above(0.15, 0.45 * d);
        return of(FeatureKind.SINGLE_FLAT, d, h, 0, OpeningForms.singleFlat(d, h));
    }

    private TrueOpening doubleFlat(double d) {
        double across = d - above(0.2, 0.6 * d);
        return of(FeatureKind.DOUBLE_FLAT, d, across, 0, OpeningForms.doubleFlat(d, across));
    }

    private TrueOpening hexagon(double across) {
        return of(FeatureKind.HEXAGON, across, across, 0, OpeningForms.regular(6, across / 2, 30));
    }

    private TrueOpening triangle(double side) {
        return of(FeatureKind.TRIANGLE, side, side, 0, OpeningForms.regular(3, side / (2 * Math.sqrt(3)), 90));
    }

    private TrueOpening keyhole(double d) {
        double slot = d * between(0.25, 0.8);
        double overall = d + slot / 2 + between(0.1, 0.9) * d;
        return of(FeatureKind.KEYHOLE, overall, slot, d / 2, OpeningForms.keyhole(overall, slot, d / 2));
    }

    private TrueOpening arcSlot(double w, double most) {
        double path = between(Math.max(2, w), most - w);
        double least = Math.max(0.8 * w, path / 4.5);
        double radius = Math.max(least, Math.min(path * between(0.25, 3), path * path / (8 * 0.12)));
        return of(FeatureKind.ARC_SLOT, path + w, w, radius, OpeningForms.arcSlot(path + w, w, radius));
    }

    /** Forms that are none of the others: L, T, cross, trapezoid, quarter of a disc, one rounded corner, star. */
    private TrueOpening free(double reach) {
        double a = 0.7 * reach;
        double b = a * between(0.25, 0.6);
        return of(FeatureKind.FREE_OPENING, 0, 0, 0, switch (random.nextInt(7)) {
            case 0 -> OpeningForms.polygon(-a, -a, a, -a, a, -a + b, -a + b, -a + b, -a + b, a, -a, a);
            case 1 -> OpeningForms.polygon(-b / 2, -a, b / 2, -a, b / 2, a - b, a, a - b, a, a, -a, a, -a, a - b, -b / 2, a - b);
            case 2 -> OpeningForms.polygon(-b, -a, b, -a, b, -b, a, -b, a, b, b, b, b, a, -b, a, -b, b, -a, b, -a, -b, -b, -b);
            case 3 -> OpeningForms.polygon(-a, -b, a, -b, a * between(0.5, 0.9), b, -a, b);
            case 4 -> OpeningForms.joined(List.of(Curve.arc(Point.ORIGIN, a, 0, Math.PI / 2),
                    Curve.line(new Point(0, a), Point.ORIGIN)));
            case 5 -> OpeningForms.joined(List.of(Curve.line(new Point(-a, -b), new Point(a, -b)),
                    Curve.arc(new Point(a - b, 0), b, 0, Math.PI / 2), Curve.line(new Point(-a, b), new Point(-a, -b))));
            default -> star(reach);
        });
    }

    private List<Curve> star(double reach) {
        int points = 4 + random.nextInt(4);
        List<Double> xy = new ArrayList<>();
        for (int i = 0; i < 2 * points; i++) {
            double r = i % 2 == 0 ? reach : reach * between(0.4, 0.6);
            xy.add(r * Math.cos(Math.PI * i / points));
            xy.add(r * Math.sin(Math.PI * i / points));
        }
        return OpeningForms.polygon(xy.stream().mapToDouble(Double::doubleValue).toArray());
    }
}
