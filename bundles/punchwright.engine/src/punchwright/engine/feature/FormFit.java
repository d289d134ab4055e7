// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.feature;

import java.util.ArrayList;
import java.util.List;

import punchwright.engine.geometry.Arc;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.LinearSolve;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Segment;

/**
 * Moves place, angle and sizes of a form to where it lies nearest to the drawn contour (least squares of the distances,
 * Gauss-Newton steps with difference quotients), so that noise in single corners averages out.
 */
final class FormFit {

    private static final int STEPS = 4;
    private static final double DIFFERENCE = 1e-5;
    private static final double GOOD_ENOUGH_MM = 1e-7;
    private static final double[] SHARES = {0.03, 0.25, 0.5, 0.75, 0.97};
    private static final int ENOUGH = 4;
    private static final double NEAR_MM = 0.03;
    private final List<Point> samples = new ArrayList<>();

    /**
     * Samples points of the edges. Corners are left out, since a point beside one may lie nearer to the other edge.
     *
     * @param tidied one segment an edge
     * @param drawn  the contour as it is drawn; its points on an arc count where the arc was drawn in pieces
     */
    FormFit(Contour tidied, Contour drawn) {
        List<Point> points = drawn.segments().size() > 2 * tidied.segments().size() ? pointsOnCurve(drawn) : List.of();
        for (Segment s : tidied.segments()) {
            List<Point> own = s instanceof Arc ? points.stream().filter(p -> liesOn(s, p)).toList() : List.of();
            if (own.size() >= ENOUGH) {
                samples.addAll(own);
            } else {
                for (double t : SHARES) {
                    samples.add(s.pointAt(t));
                }
            }
        }
    }

    private static List<Point> pointsOnCurve(Contour drawn) {
        List<Point> points = new ArrayList<>();
        for (Segment s : drawn.segments()) {
            points.add(s.start());
            if (s instanceof Arc) {
                points.add(s.pointAt(0.5));
            }
        }
        return points;
    }

    private static boolean liesOn(Segment s, Point p) {
        double t = s.shareNearest(p);
        return t > 0.01 && t < 0.99 && s.distance(p) < NEAR_MM;
    }

    /** The better fit; the match itself when it is exact already or nothing is gained. */
    Match improved(Match match) {
        double[] x = vector(match);
        double best = worst(residuals(match.kind(), x));
        for (int step = 0; step < STEPS && best > GOOD_ENOUGH_MM; step++) {
            double[] next = step(match.kind(), x);
            double[] r = next == null ? null : residuals(match.kind(), next);
            if (r == null || norm(r) >= norm(residuals(match.kind(), x))) {
                break;
            }
            x = next;
            best = worst(r);
        }
        return match(match.kind(), x);
    }

    /** Greatest distance of a sample from the form, in mm; infinite when the sizes make no form. */
    double worstMm(Match match) {
        return worst(residuals(match.kind(), vector(match)));
    }

    private double[] step(FeatureKind kind, double[] x) {
        int[] free = free(kind);
        double[] r = residuals(kind, x);
        double[][] slope = new double[free.length][];
        for (int k = 0; k < free.length; k++) {
            double[] moved = x.clone();
            moved[free[k]] += DIFFERENCE;
            slope[k] = residuals(kind, moved);
            if (slope[k] == null) {
                return null;
            }
        }
        double[][] rows = new double[free.length][free.length + 1];
        for (int i = 0; i < r.length; i++) {
            for (int a = 0; a < free.length; a++) {
                double da = (slope[a][i] - r[i]) / DIFFERENCE;
                for (int b = 0; b < free.length; b++) {
                    rows[a][b] += da * (slope[b][i] - r[i]) / DIFFERENCE;
                }
                rows[a][free.length] -= da * r[i];
            }
        }
        double[] change = LinearSolve.solve(rows);
        if (change == null) {
            return null;
        }
        double[] next = x.clone();
        for (int k = 0; k < free.length; k++) {
            next[free[k]] += change[k];
        }
        return next;
    }

    /** Positions in the vector (x, y, angle, length, width, radius) that a kind may change. */
    private static int[] free(FeatureKind kind) {
        return switch (kind) {
            case ROUND -> new int[] {0, 1, 3};
            case SQUARE, HEXAGON, TRIANGLE -> new int[] {0, 1, 2, 3};
            case RECTANGLE, OBROUND, SINGLE_FLAT, DOUBLE_FLAT -> new int[] {0, 1, 2, 3, 4};
            default -> new int[] {0, 1, 2, 3, 4, 5};
        };
    }

    private static double[] vector(Match m) {
        return new double[] {m.center().x(), m.center().y(), Math.toRadians(m.angleDeg()), m.lengthMm(), m.widthMm(),
            m.cornerRadiusMm()};
    }

    private static Match match(FeatureKind kind, double[] x) {
        boolean oneSize = free(kind).length < 5;
        double width = oneSize ? x[3] : x[4];
        double radius = kind == FeatureKind.OBROUND ? width / 2 : x[5];
        return new Match(kind, new Point(x[0], x[1]), Math.toDegrees(x[2]), x[3], width, radius);
    }

    private double[] residuals(FeatureKind kind, double[] x) {
        Contour ideal = IdealContours.of(match(kind, x));
        return ideal == null ? null : samples.stream().mapToDouble(p -> signedDistance(ideal, p)).toArray();
    }

    private static double worst(double[] r) {
        double worst = r == null ? Double.POSITIVE_INFINITY : 0;
        for (int i = 0; r != null && i < r.length; i++) {
            worst = Math.max(worst, Math.abs(r[i]));
        }
        return worst;
    }

    private static double norm(double[] r) {
        double sum = r == null ? Double.POSITIVE_INFINITY : 0;
        for (int i = 0; r != null && i < r.length; i++) {
            sum += r[i] * r[i];
        }
        return sum;
    }

    /** Distance from a counter-clockwise contour, positive outside. */
    private static double signedDistance(Contour contour, Point p) {
        double nearest = Double.POSITIVE_INFINITY;
        Segment at = null;
        for (Segment s : contour.segments()) {
            double d = s.distance(p);
            if (d < nearest) {
                nearest = d;
                at = s;
            }
        }
        return nearest * (isOutside(at, p) ? 1 : -1);
    }

    private static boolean isOutside(Segment s, Point p) {
        return s instanceof Arc arc ? p.distance(arc.center()) > arc.radiusMm() == arc.sweepRad() > 0
                : s.tangentAt(0).cross(p.minus(s.start())) < 0;
    }
}
