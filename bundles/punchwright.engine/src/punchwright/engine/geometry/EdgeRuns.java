// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * Cuts a chain of segments into runs that lie on one line or one circle within the tolerance: from each start the longest
 * run, found by doubling and halving its length so that long chains stay quick. A run on a circle is taken when it reaches
 * further than the one on a line.
 */
final class EdgeRuns {

    /** Straight pieces that make an arc at least, and the largest angle between two of them. */
    private static final int LEAST_PIECES = 3;
    private static final double LARGEST_STEP_RAD = Math.toRadians(40);
    /** Straight pieces that turn by less in all are one straight edge, drawn with small errors. */
    private static final double LEAST_SWEEP_RAD = Math.toRadians(4);
    private static final int SURE_PIECES = 8;
    private static final double LARGEST_SHARE = 0.55;
    private static final double FULL = 2 * Math.PI;

    private final List<Segment> segments;
    private final double toleranceMm;
    private final List<int[]> runs = new ArrayList<>();
    private final List<Boolean> arcs = new ArrayList<>();

    EdgeRuns(List<Segment> segments, double toleranceMm) {
        this.segments = segments;
        this.toleranceMm = toleranceMm;
    }

    private void findRuns() {
        for (int i = 0; i < segments.size();) {
            int line = longest(i, true);
            int arc = longest(i, false);
            arc = isRound(i, arc) ? arc : i + 1;
            boolean round = arc > line;
            runs.add(new int[] {i, round ? arc : line});
            arcs.add(round);
            i = round ? arc : line;
        }
    }

    /** Whether a run on a circle bends enough, or has enough pieces, to be meant as an arc. */
    private boolean isRound(int from, int to) {
        Arc arc = to - from > 1 ? arc(from, to) : null;
        return arc != null && (Math.abs(arc.sweepRad()) >= LEAST_SWEEP_RAD || to - from >= SURE_PIECES
                || segments.subList(from, to).stream().anyMatch(Arc.class::isInstance));
    }

    /** Where the run of most pieces begins; the first run does not count, since it may begin in the middle of an edge. */
    int sureStart() {
        findRuns();
        int[] best = {0, 0};
        for (int[] run : runs.subList(1, runs.size())) {
            best = run[1] - run[0] > best[1] - best[0] ? run : best;
        }
        return best[0];
    }

    int lastRunPieces() {
        int[] last = runs.get(runs.size() - 1);
        return last[1] - last[0];
    }

    /** One segment for each run, in order. */
    List<Segment> merged() {
        findRuns();
        settleBorders();
        settleArcs();
        List<Segment> out = new ArrayList<>();
        for (int k = 0; k < runs.size(); k++) {
            out.add(merge(runs.get(k)[0], runs.get(k)[1], arcs.get(k)));
        }
        return out;
    }

    /** The circle on which all segments lie, once round; null when there is none. */
    Arc wholeCircle() {
        Arc arc = arc(0, segments.size());
        return arc != null && Math.abs(Math.abs(arc.sweepRad()) - FULL) < 1e-2 ? arc : null;
    }

    /** End (exclusive) of the longest run from {@code i}; {@code i + 1} for a run of the segment alone. */
    private int longest(int i, boolean line) {
        int good = i + 1;
        for (int few = i + LEAST_PIECES; !line && good == i + 1 && few > i + 1; few--) {
            good = few <= segments.size() && fits(i, few, false) ? few : good;
        }
        int bad = segments.size() + 1;
        for (int step = 1; good < segments.size() && good + step < bad; step = Math.min(step * 2, 1 << 20)) {
            int end = Math.min(segments.size(), good + step);
            if (fits(i, end, line)) {
                good = end;
            } else {
                bad = end;
                break;
            }
        }
        while (bad - good > 1) {
            int middle = (good + bad) / 2;
            if (fits(i, middle, line)) {
                good = middle;
            } else {
                bad = middle;
            }
        }
        return good == i + 1 || fits(i, good, line) ? good : i + 1;
    }

    private boolean fits(int from, int to, boolean line) {
        return line ? fitsLine(from, to) : arc(from, to) != null;
    }

    private boolean fitsLine(int from, int to) {
        Line chord = new Line(segments.get(from).start(), segments.get(to - 1).end());
        Point direction = chord.tangentAt(0);
        if (chord.lengthMm() <= toleranceMm) {
            return false;
        }
        for (Segment s : segments.subList(from, to)) {
            if (s.end().minus(s.start()).dot(direction) <= 0 || chord.distance(s.start()) > toleranceMm
                    || chord.distance(s.pointAt(0.5)) > toleranceMm) {
                return false;
            }
        }
        return true;
    }

    /** The arc of a run; null when the run is not on one circle. */
    private Arc arc(int from, int to) {
        List<Segment> run = segments.subList(from, to);
        boolean anyArc = run.stream().anyMatch(Arc.class::isInstance);
        if (!anyArc && (run.size() < LEAST_PIECES || longestShare(run) > LARGEST_SHARE)) {
            return null;
        }
        CircleFit fit = CircleFit.of(onCurve(run));
        if (fit == null) {
            return null;
        }
        double sweep = sweep(run, fit);
        return Double.isNaN(sweep) || sweep == 0 || Math.abs(sweep) > FULL + 1e-3 ? null
                : new Arc(fit.center(), fit.radiusMm(), run.get(0).start().minus(fit.center()).angleRad(), sweep);
    }

    /** Length of the longest piece as a share of the run: high where a straight edge sits between two short pieces. */
    private static double longestShare(List<Segment> run) {
        double sum = 0;
        double longest = 0;
        for (Segment s : run) {
            sum += s.lengthMm();
            longest = Math.max(longest, s.lengthMm());
        }
        return longest / sum;
    }

    private static List<Point> onCurve(List<Segment> run) {
        List<Point> points = new ArrayList<>();
        for (Segment s : run) {
            points.add(s.start());
            if (s instanceof Arc) {
                points.add(s.pointAt(0.25));
                points.add(s.pointAt(0.5));
                points.add(s.pointAt(0.75));
            }
        }
        points.add(run.get(run.size() - 1).end());
        return points;
    }

    /** Signed angle travelled about the centre; NaN when a piece is off the circle or turns back. */
    private double sweep(List<Segment> run, CircleFit fit) {
        double total = 0;
        for (Segment s : run) {
            double step = step(s, fit);
            double off = Math.max(fit.distance(s.start()), fit.distance(s.end()));
            double allowed = s instanceof Arc ? toleranceMm : 2 * toleranceMm;
            if (off > toleranceMm || fit.distance(s.pointAt(0.5)) > allowed || total * step < 0
                    || s instanceof Line && Math.abs(step) > LARGEST_STEP_RAD) {
                return Double.NaN;
            }
            total += step;
        }
        return total;
    }

    private static double step(Segment s, CircleFit fit) {
        if (s instanceof Arc arc && Math.abs(arc.sweepRad()) > Math.PI / 2) {
            return arc.sweepRad();
        }
        Point a = s.start().minus(fit.center());
        Point b = s.end().minus(fit.center());
        return Math.atan2(a.cross(b), a.dot(b));
    }

    /** Gives the last piece of a straight run to the arc after it, and the other way round, where it fits there better. */
    private void settleBorders() {
        for (int k = 0; k + 1 < runs.size(); k++) {
            int[] a = runs.get(k);
            int[] b = runs.get(k + 1);
            while (arcs.get(k) != arcs.get(k + 1) && a[1] - a[0] > 1 && !arcs.get(k) && arc(a[1] - 1, b[1]) != null) {
                a[1]--;
                b[0]--;
            }
            while (arcs.get(k) != arcs.get(k + 1) && b[1] - b[0] > 1 && !arcs.get(k + 1) && arc(a[0], a[1] + 1) != null) {
                a[1]++;
                b[0]++;
            }
        }
    }

    /**
     * A run of one short straight edge and the first chords of an arc may lie on a circle of its own: where the longer of two
     * runs on circles can take all of the other but one piece, it does.
     */
    private void settleArcs() {
        for (int k = 0; k + 1 < runs.size(); k++) {
            int[] a = runs.get(k);
            int[] b = runs.get(k + 1);
            boolean round = arcs.get(k) && arcs.get(k + 1);
            if (round && a[1] - a[0] > 1 && b[1] - b[0] > a[1] - a[0] && arc(a[0] + 1, b[1]) != null) {
                a[1] = a[0] + 1;
                b[0] = a[1];
                arcs.set(k, false);
            } else if (round && b[1] - b[0] > 1 && a[1] - a[0] > b[1] - b[0] && arc(a[0], b[1] - 1) != null) {
                b[0] = b[1] - 1;
                a[1] = b[0];
                arcs.set(k + 1, false);
            }
        }
    }

    private Segment merge(int from, int to, boolean round) {
        if (to - from == 1) {
            return segments.get(from);
        }
        Arc arc = round ? arc(from, to) : null;
        return arc != null ? arc : new Line(segments.get(from).start(), segments.get(to - 1).end());
    }
}
