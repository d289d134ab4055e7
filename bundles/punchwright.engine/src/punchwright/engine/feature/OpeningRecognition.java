// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.feature;

import java.util.List;

import punchwright.engine.geometry.Angles;
import punchwright.engine.geometry.Bounds;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Segment;

/** What one opening is: the first matcher whose ideal contour the drawn one lies on. */
final class OpeningRecognition {

    private static final double[] SAMPLES = {0, 0.25, 0.5, 0.75};
    /** Angles this close to a multiple of 15 degrees, seen at the far end of the feature, are meant to be it. */
    private static final double SNAP_STEP_DEG = 15;

    private final double toleranceMm;
    private final List<OpeningMatcher> matchers;

    OpeningRecognition(double toleranceMm) {
        this.toleranceMm = toleranceMm;
        this.matchers = List.of(new RoundMatcher(toleranceMm), new PolygonMatcher(toleranceMm), new RoundedMatcher(),
                new FlatsMatcher(toleranceMm), new SlotMatcher());
    }

    /** @param tidied counter-clockwise */
    Match recognise(Contour tidied) {
        for (OpeningMatcher matcher : matchers) {
            Match match = matcher.match(tidied);
            if (match != null) {
                Match snapped = withSnappedAngle(match);
                if (lies(tidied, snapped)) {
                    return snapped;
                }
            }
        }
        return free(tidied);
    }

    private Match withSnappedAngle(Match m) {
        double nearest = Math.round(m.angleDeg() / SNAP_STEP_DEG) * SNAP_STEP_DEG;
        double shift = Math.toRadians(Math.abs(m.angleDeg() - nearest)) * m.lengthMm() / 2;
        double angle = shift <= toleranceMm / 4 ? nearest : m.angleDeg();
        double period = switch (m.kind()) {
            case SQUARE -> 90;
            case RECTANGLE, ROUNDED_RECTANGLE, OBROUND, DOUBLE_FLAT -> 180;
            case HEXAGON -> 60;
            case TRIANGLE -> 120;
            default -> 360;
        };
        return new Match(m.kind(), m.center(), Angles.normalizeDeg(angle) % period, m.lengthMm(), m.widthMm(), m.cornerRadiusMm());
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

    private static Match free(Contour contour) {
        Bounds box = contour.bounds();
        return new Match(FeatureKind.FREE_OPENING, box.center(), 0, box.width(), box.height(), 0);
    }
}
