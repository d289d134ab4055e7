// SPDX-License-Identifier: EPL-2.0
package punchwright.synthetic;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

import punchwright.engine.feature.Feature;
import punchwright.engine.feature.FeatureKind;
import punchwright.engine.feature.FeatureSet;
import punchwright.engine.feature.OutlineDetail;
import punchwright.engine.feature.Pattern;
import punchwright.engine.geometry.Point;

/**
 * Holds the features found against those drawn. Sizes must agree within 0.01 mm. Two radii are measured by what they do to
 * the contour, since noise leaves them open: the centre line of a slot by its rise over the chord, a corner radius by the place
 * of the middle of its arc; both within 0.01 mm.
 */
public final class PartComparison {

    public static final double SIZE_MM = 0.01;
    private static final double PLACE_MM = 0.03;
    /** Share of a corner radius by which the middle of its arc keeps from the corner. */
    private static final double CORNER = Math.sqrt(2) - 1;

    private final SyntheticPart truth;
    private final FeatureSet found;
    private final List<Miss> misses = new ArrayList<>();
    private final Map<String, Tally> tallies;

    /** Counts of one kind. */
    public static final class Tally {
        private int drawn;
        private int recognised;
        private double worstMm;
        private double worstRadiusMm;

        public int drawn() {
            return drawn;
        }

        public int recognised() {
            return recognised;
        }

        /** Largest error of a length or width, mm. */
        public double worstMm() {
            return worstMm;
        }

        /** Largest error of a radius as it is, mm. */
        public double worstRadiusMm() {
            return worstRadiusMm;
        }
    }

    private PartComparison(SyntheticPart truth, FeatureSet found, Map<String, Tally> tallies) {
        this.truth = truth;
        this.found = found;
        this.tallies = tallies;
    }

    /** What was missed; counts go into the tallies by kind. */
    public static List<Miss> compare(SyntheticPart truth, FeatureSet found, Map<String, Tally> tallies) {
        PartComparison c = new PartComparison(truth, found, tallies);
        c.openings();
        c.details();
        c.patterns();
        return c.misses;
    }

    private Tally tally(String kind) {
        return tallies.computeIfAbsent(kind, k -> new Tally());
    }

    private void miss(String kind, String text) {
        misses.add(new Miss(kind, "part " + truth.number() + " (noise " + truth.noiseMm() + " mm): " + kind + ": " + text));
    }

    private void openings() {
        List<Feature> left = new ArrayList<>(found.features().stream().filter(Feature::isOpening).toList());
        for (TrueOpening o : truth.openings()) {
            Tally tally = tally(o.kind().name());
            tally.drawn++;
            Feature f = left.stream().min(Comparator.comparingDouble(g -> g.center().distance(o.center()))).orElse(null);
            String wrong = f == null ? "nothing found" : wrong(o, f);
            left.remove(f);
            if (f != null && f.kind() == o.kind()) {
                tally.worstMm = Math.max(tally.worstMm,
                        Math.max(Math.abs(f.lengthMm() - o.lengthMm()), Math.abs(f.widthMm() - o.widthMm())));
                tally.worstRadiusMm = Math.max(tally.worstRadiusMm, Math.abs(f.cornerRadiusMm() - o.radiusMm()));
            }
            if (wrong == null) {
                tally.recognised++;
            } else {
                miss(o.kind().name(), wrong + "; drawn " + sizes(o.lengthMm(), o.widthMm(), o.radiusMm()) + " at " + o.angleDeg()
                        + (f == null ? "" : "; found " + f.kind() + " " + sizes(f.lengthMm(), f.widthMm(), f.cornerRadiusMm())
                        + " at " + f.angleDeg()));
            }
        }
        left.forEach(f -> miss(f.kind().name(), "found but not drawn"));
    }

    private static String sizes(double l, double w, double r) {
        return String.format(java.util.Locale.ROOT, "%.4f x %.4f r %.4f", l, w, r);
    }

    private static String wrong(TrueOpening o, Feature f) {
        if (f.kind() != o.kind()) {
            return "other kind";
        }
        if (Math.abs(f.lengthMm() - o.lengthMm()) > SIZE_MM) {
            return "length off by " + (f.lengthMm() - o.lengthMm());
        }
        if (Math.abs(f.widthMm() - o.widthMm()) > SIZE_MM) {
            return "width off by " + (f.widthMm() - o.widthMm());
        }
        if (f.center().distance(o.center()) > PLACE_MM) {
            return "centre off by " + f.center().distance(o.center());
        }
        if (Math.abs(f.cornerRadiusMm() - o.radiusMm()) * radiusShare(o) > SIZE_MM) {
            return "radius off by " + (f.cornerRadiusMm() - o.radiusMm());
        }
        if (o.kind() == FeatureKind.FREE_OPENING) {
            return Math.abs(f.contour().areaMm2() - o.areaMm2()) > SIZE_MM * o.edgeLengthMm() ? "area off" : null;
        }
        double turn = turn(o, f.angleDeg() - o.angleDeg());
        return turn * lever(o) > PLACE_MM ? "angle off by " + Math.toDegrees(turn) + " degrees" : null;
    }

    private static double radiusShare(TrueOpening o) {
        return switch (o.kind()) {
            case ROUNDED_RECTANGLE -> CORNER;
            case ARC_SLOT -> Math.min(1, 1 - Math.cos((o.lengthMm() - o.widthMm()) / o.radiusMm() / 2));
            default -> 1;
        };
    }

    /** Difference of angles in radians, as the form repeats. */
    private static double turn(TrueOpening o, double deg) {
        double period = switch (o.kind()) {
            case SQUARE -> 90;
            case ROUNDED_RECTANGLE -> o.lengthMm() - o.widthMm() < 0.05 ? 90 : 180;
            case RECTANGLE, OBROUND, DOUBLE_FLAT -> 180;
            case HEXAGON -> 60;
            case TRIANGLE -> 120;
            default -> 360;
        };
        double off = Math.abs(deg) % period;
        return Math.toRadians(Math.min(off, period - off));
    }

    /** How far the edges lie from the centre that tell the direction, in mm. */
    private static double lever(TrueOpening o) {
        double l = o.lengthMm();
        double w = o.widthMm();
        double r = o.radiusMm();
        return switch (o.kind()) {
            case ROUND -> 0;
            case ROUNDED_RECTANGLE, KEYHOLE -> l / 2 - r;
            case OBROUND -> (l - w) / 2;
            case SINGLE_FLAT -> Math.sqrt(l * l / 4 - (w - l / 2) * (w - l / 2));
            case DOUBLE_FLAT -> Math.sqrt(l * l - w * w) / 2;
            case ARC_SLOT -> r * Math.abs(Math.sin(Math.min(Math.PI / 2, (l - w) / r / 2)));
            default -> l / 4;
        };
    }

    private void details() {
        List<OutlineDetail> left = new ArrayList<>(found.details());
        for (TrueDetail d : truth.details()) {
            Tally tally = tally(d.kind().name());
            tally.drawn++;
            OutlineDetail f = left.stream().filter(g -> g.kind() == d.kind() && g.place().distance(d.place()) < 1).findFirst()
                    .orElse(null);
            left.remove(f);
            double off = f == null ? 0 : Math.max(Math.abs(f.lengthMm() - d.lengthMm()), Math.abs(f.depthMm() - d.depthMm()));
            double radius = f == null ? 0 : Math.abs(f.radiusMm() - d.radiusMm());
            double share = d.kind() == OutlineDetail.Kind.CORNER_RADIUS ? CORNER : 1;
            tally.worstMm = Math.max(tally.worstMm, off);
            tally.worstRadiusMm = Math.max(tally.worstRadiusMm, radius);
            if (f != null && off <= SIZE_MM && radius * share <= SIZE_MM && f.place().distance(d.place()) <= PLACE_MM) {
                tally.recognised++;
            } else {
                miss(d.kind().name(), "drawn " + d + "; found " + f);
            }
        }
        left.forEach(f -> miss(f.kind().name(), "found but not drawn: " + f));
        long edges = found.features().stream().filter(f -> !f.isOpening() && f.kind() != FeatureKind.FORM).count();
        Tally tally = tally("OUTER EDGES");
        tally.drawn += truth.edges();
        tally.recognised += Math.min(edges, truth.edges());
        if (edges != truth.edges()) {
            miss("OUTER EDGES", truth.edges() + " drawn, " + edges + " found");
        }
    }

    private void patterns() {
        List<Pattern> left = new ArrayList<>(found.patterns());
        for (TruePattern p : truth.patterns()) {
            Tally tally = tally(p.kind().name());
            tally.drawn++;
            Pattern f = left.stream().filter(g -> g.kind() == p.kind() && holdsAll(g, p)).findFirst().orElse(null);
            left.remove(f);
            double off = f == null ? 0 : pitchError(p, f);
            tally.worstMm = Math.max(tally.worstMm, off);
            if (f != null && off <= SIZE_MM) {
                tally.recognised++;
            } else {
                miss(p.kind().name(), "drawn " + p.pitchMm() + "/" + p.rowPitchMm() + " " + p.columns() + "/" + p.rows()
                        + "; found " + f
                        + " of " + found.patterns().stream().map(Pattern::kind).toList());
            }
        }
        left.forEach(f -> miss(f.kind().name(), "found but not drawn: " + f));
    }

    private boolean holdsAll(Pattern f, TruePattern p) {
        List<Point> centers = f.features().stream().map(n -> found.features().get(n - 1).center()).toList();
        return centers.size() == p.centers().size()
                && p.centers().stream().allMatch(c -> centers.stream().anyMatch(d -> d.distance(c) < PLACE_MM));
    }

    /** Rows and columns of a grid may change their parts: the better reading counts, numbers and pitches together. */
    private static double pitchError(TruePattern p, Pattern f) {
        double straight = pitchError(f, p.columns(), p.rows(), p.pitchMm(), p.rowPitchMm());
        return p.kind() == Pattern.Kind.GRID
                ? Math.min(straight, pitchError(f, p.rows(), p.columns(), p.rowPitchMm(), p.pitchMm())) : straight;
    }

    private static double pitchError(Pattern f, int columns, int rows, double pitchMm, double rowPitchMm) {
        return f.columns() == columns && f.rows() == rows
                ? Math.max(Math.abs(f.pitchMm() - pitchMm), Math.abs(f.rowPitchMm() - rowPitchMm)) : 1;
    }
}
