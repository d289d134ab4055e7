// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.feature;

import java.util.List;

import punchwright.engine.geometry.Angles;
import punchwright.engine.geometry.Arc;
import punchwright.engine.geometry.Bounds;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Segment;

/** What one opening is: the first matcher whose ideal contour the drawn one lies on. */
final class OpeningRecognition {

    private static final double[] SAMPLES = {0, 0.25, 0.5, 0.75};
    /** Angles this close to a multiple of 15 degrees, seen at the far end of the feature, are meant to be it. */
    private static final double SNAP_STEP_DEG = 15;

    /** Below this a contour counts as drawn exactly. */
    private static final double EXACT_MM = 1e-6;
    /** An estimate farther off than this is of another kind. */
    private static final double ROUGH_MM = 0.3;
    private static final double CLEARLY = 0.7;
    /** A rectangle whose ends keep f mm straight between their corners lies within this share of f from an obround. */
    private static final double OBROUND_SHARE = (Math.sqrt(2) - 1) / 2;
    /** Guesses from directions a few degrees off may lie this share of the size beside the contour. */
    private static final double FAR_SHARE = 0.05;

    private final double toleranceMm;
    private final List<OpeningMatcher> matchers;

    OpeningRecognition(double toleranceMm) {
        this.toleranceMm = toleranceMm;
        this.matchers = List.of(new PolygonMatcher(toleranceMm), new RoundedMatcher(),
                new FlatsMatcher(toleranceMm), new BoxFormMatcher(),
                new SlotMatcher());
    }

    /**
     * @param tidied one segment an edge, counter-clockwise
     * @param drawn  the contour as it is drawn
     */
    Match recognise(Contour tidied, Contour drawn) {
        Match round = RoundMatcher.match(drawn, toleranceMm);
        if (round != null) {
            return round;
        }
        FormFit fit = new FormFit(drawn);
        for (OpeningMatcher matcher : matchers) {
            Match match = matcher.match(tidied);
            Match found = match == null || fit.worstMm(match) >= ROUGH_MM ? null : verified(match, drawn, fit);
            if (found != null) {
                return found;
            }
        }
        Match nearest = nearest(new DirectionSearch(drawn, fit, toleranceMm).guesses(
                Math.max(ROUGH_MM, FAR_SHARE * Math.max(drawn.bounds().width(), drawn.bounds().height()))), drawn, fit);
        return nearest != null ? nearest : free(extent(drawn, tidied));
    }

    /**
     * Of guesses whose kinds differ by little the first, unless the contour lies clearly better on a later one: a form of more
     * sizes always lies a little better.
     */
    private Match nearest(List<Match> guesses, Contour drawn, FormFit fit) {
        Match best = null;
        for (Match guess : guesses) {
            Match found = verified(guess, drawn, fit);
            best = found != null && (best == null || fit.worstMm(found) < CLEARLY * fit.worstMm(best)) ? found : best;
        }
        return best;
    }

    /** Moved to where it fits best; null when the contour does not lie on it even there. */
    private Match verified(Match match, Contour drawn, FormFit fit) {
        Match better = withSnappedAngle(fit.improved(match), fit);
        if (!lies(drawn, better)) {
            return null;
        }
        boolean endsNearlyRound = better.kind() == FeatureKind.ROUNDED_RECTANGLE
                && better.widthMm() - 2 * better.cornerRadiusMm() < toleranceMm / OBROUND_SHARE;
        Match obround = endsNearlyRound
                ? verified(new Match(FeatureKind.OBROUND, better.center(), better.angleDeg(), better.lengthMm(),
                better.widthMm(), better.widthMm() / 2), drawn, fit) : null;
        return obround != null ? obround : better;
    }

    /** A round angle where the drawn contour fits it as well; brought into the period of the kind. */
    private Match withSnappedAngle(Match m, FormFit fit) {
        double nearest = Math.round(m.angleDeg() / SNAP_STEP_DEG) * SNAP_STEP_DEG;
        double shift = Math.toRadians(Math.abs(m.angleDeg() - nearest)) * m.lengthMm() / 2;
        Match round = turned(m, nearest);
        boolean snap = shift <= toleranceMm / 2 && fit.worstMm(round) <= Math.max(EXACT_MM, 1.2 * fit.worstMm(m));
        return turned(m, Angles.normalizeDeg(snap ? nearest : m.angleDeg()) % period(m.kind()));
    }

    private static Match turned(Match m, double angleDeg) {
        return new Match(m.kind(), m.center(), angleDeg, m.lengthMm(), m.widthMm(), m.cornerRadiusMm());
    }

    /** Angle after which the form repeats. */
    private static double period(FeatureKind kind) {
        return switch (kind) {
            case SQUARE -> 90;
            case RECTANGLE, ROUNDED_RECTANGLE, OBROUND, DOUBLE_FLAT -> 180;
            case HEXAGON -> 60;
            case TRIANGLE -> 120;
            default -> 360;
        };
    }

    private boolean lies(Contour drawn, Match match) {
        Contour ideal = IdealContours.of(match);
        if (ideal == null || Math.abs(ideal.areaMm2() - drawn.areaMm2()) > toleranceMm * drawn.lengthMm()) {
            return false;
        }
        for (Segment s : drawn.segments()) {
            for (double t : SAMPLES) {
                if (ideal.distance(s.pointAt(t)) > toleranceMm) {
                    return false;
                }
            }
        }
        for (Segment s : ideal.segments()) {
            if (drawn.distance(s.pointAt(0.5)) > toleranceMm || drawn.distance(s.start()) > 2 * toleranceMm) {
                return false;
            }
        }
        return true;
    }

    /** The drawn box, and how far arcs reach that are drawn in chords. */
    private static Bounds extent(Contour drawn, Contour tidied) {
        Bounds box = drawn.bounds();
        for (Segment s : tidied.segments()) {
            for (int quarter = 0; quarter < 4; quarter++) {
                if (s instanceof Arc arc && arc.spans(quarter * Math.PI / 2)) {
                    box = box.including(arc.center().plus(Point.polar(arc.radiusMm(), quarter * Math.PI / 2)));
                }
            }
        }
        return box;
    }

    private static Match free(Bounds box) {
        return new Match(FeatureKind.FREE_OPENING, box.center(), 0, box.width(), box.height(), 0);
    }
}
