// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.feature;

import java.util.ArrayList;
import java.util.List;

import punchwright.engine.geometry.Arc;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Line;
import punchwright.engine.geometry.LinearSolve;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Segment;

/**
 * Moves place, angle and sizes of a form to where it lies nearest to the drawn contour (least squares of the distances,
 * Gauss-Newton steps with difference quotients), so that noise in single corners averages out. Drawn corners and points of
 * drawn arcs count everywhere, points inside drawn lines only where the form is straight, since a chord lies beside its arc;
 * nothing counts beside a sharp corner of the form, where the other edge may be nearer.
 */
final class FormFit {

    private static final int STEPS = 12;
    private static final int HALVINGS = 4;
    private static final double DIFFERENCE = 1e-5;
    private static final double DAMPING = 1e-9;
    private static final double GOOD_ENOUGH_MM = 1e-7;
    /** A step that gains less, as a share, is the last. */
    private static final double GAIN = 1e-5;
    private static final double[] ARC_SHARES = {0.03, 0.25, 0.5, 0.75, 0.97};
    private static final double[] LINE_SHARES = {0.1, 0.3, 0.5, 0.7, 0.9};
    private static final double CORNER_MM = 0.05;
    private static final double SHARP = Math.cos(Math.toRadians(10));

    private final Contour drawn;
    private final List<Point> onCurve = new ArrayList<>();
    private final List<Point> insideLines = new ArrayList<>();

    /** @param drawn the contour as it is drawn */
    FormFit(Contour drawn) {
        this.drawn = drawn;
        for (Segment s : drawn.segments()) {
            onCurve.add(s.start());
            for (double t : s instanceof Arc ? ARC_SHARES : LINE_SHARES) {
                (s instanceof Arc ? onCurve : insideLines).add(s.pointAt(t));
            }
        }
    }

    /** The better fit; the match itself when it is exact already or nothing is gained. */
    Match improved(Match match) {
        Match first = improvedOnce(match);
        Match second = first == match ? match : improvedOnce(first);
        Match byCorners = match.kind() == FeatureKind.TRIANGLE ? TriangleFit.of(drawn, second, CORNER_MM) : null;
        return byCorners != null ? byCorners : second;
    }

    private Match improvedOnce(Match match) {
        List<Point> samples = samples(match);
        double[] x = vector(match);
        double[] r = residuals(match.kind(), x, samples);
        if (samples.size() < free(match.kind()).length || worst(r) <= GOOD_ENOUGH_MM) {
            return match;
        }
        double before = norm(r);
        for (int step = 0; step < STEPS; step++) {
            double[] next = step(match.kind(), x, samples);
            double after = next == null ? before : norm(residuals(match.kind(), next, samples));
            if (!(after < before)) {
                break;
            }
            x = next;
            boolean last = after > before * (1 - GAIN);
            before = after;
            if (last) {
                break;
            }
        }
        return match(match.kind(), x);
    }

    /** Greatest distance of a sample from the form, in mm; infinite when the sizes make no form. */
    double worstMm(Match match) {
        return worst(residuals(match.kind(), vector(match), samples(match)));
    }

    /** The drawn points that tell where this form lies. */
    private List<Point> samples(Match match) {
        Contour ideal = IdealContours.of(match);
        if (ideal == null) {
            return List.of();
        }
        List<Point> corners = sharpCorners(ideal);
        List<Point> samples = new ArrayList<>();
        onCurve.stream().filter(p -> isClear(p, corners)).forEach(samples::add);
        insideLines.stream().filter(p -> isClear(p, corners) && nearest(ideal, p) instanceof Line).forEach(samples::add);
        return samples;
    }

    private static List<Point> sharpCorners(Contour ideal) {
        List<Point> corners = new ArrayList<>();
        Segment before = ideal.segments().get(ideal.segments().size() - 1);
        for (Segment s : ideal.segments()) {
            if (before.tangentAt(1).dot(s.tangentAt(0)) < SHARP) {
                corners.add(s.start());
            }
            before = s;
        }
        return corners;
    }

    private static boolean isClear(Point p, List<Point> corners) {
        for (Point c : corners) {
            if (c.distance(p) < CORNER_MM) {
                return false;
            }
        }
        return true;
    }

    private double[] step(FeatureKind kind, double[] x, List<Point> samples) {
        int[] free = free(kind);
        double[] r = residuals(kind, x, samples);
        double[][] slope = new double[free.length][];
        for (int k = 0; k < free.length; k++) {
            double[] moved = x.clone();
            moved[free[k]] += DIFFERENCE;
            slope[k] = residuals(kind, moved, samples);
            if (slope[k] == null) {
                return null;
            }
        }
        double[] change = LinearSolve.solve(normalEquations(r, slope));
        for (double share = 1; change != null && share > Math.pow(0.5, HALVINGS + 0.5); share /= 2) {
            double[] next = x.clone();
            for (int k = 0; k < free.length; k++) {
                next[free[k]] += share * change[k];
            }
            if (norm(residuals(kind, next, samples)) < norm(r)) {
                return next;
            }
        }
        return null;
    }

    private static double[][] normalEquations(double[] r, double[][] slope) {
        int n = slope.length;
        double[][] rows = new double[n][n + 1];
        for (int i = 0; i < r.length; i++) {
            for (int a = 0; a < n; a++) {
                double da = (slope[a][i] - r[i]) / DIFFERENCE;
                for (int b = 0; b < n; b++) {
                    rows[a][b] += da * (slope[b][i] - r[i]) / DIFFERENCE;
                }
                rows[a][n] -= da * r[i];
            }
        }
        for (int a = 0; a < n; a++) {
            rows[a][a] = rows[a][a] * (1 + DAMPING) + DAMPING;
        }
        return rows;
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

    private static double[] residuals(FeatureKind kind, double[] x, List<Point> samples) {
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
        Segment at = nearest(contour, p);
        return at.distance(p) * (isOutside(at, p) ? 1 : -1);
    }

    private static Segment nearest(Contour contour, Point p) {
        double least = Double.POSITIVE_INFINITY;
        Segment at = null;
        for (Segment s : contour.segments()) {
            double d = s.distance(p);
            if (d < least) {
                least = d;
                at = s;
            }
        }
        return at;
    }

    private static boolean isOutside(Segment s, Point p) {
        return s instanceof Arc arc ? p.distance(arc.center()) > arc.radiusMm() == arc.sweepRad() > 0
                : s.tangentAt(0).cross(p.minus(s.start())) < 0;
    }
}
