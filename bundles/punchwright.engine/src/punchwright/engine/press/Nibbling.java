// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import java.util.List;

import punchwright.engine.finding.Finding;

/**
 * Nibbling with a round tool: hits along an edge or an arc for a permitted scallop, and whether the pitch is a sound one.
 *
 * <p>Symbols: r punch radius [mm], R radius of the arc [mm], h permitted scallop [mm], t thickness [mm], beta angle of an open
 * arc [degrees], theta largest step from {@link Scallop} [rad], L length [mm]. Closed circle {@code n = ceil(2 pi / theta)};
 * open arc with a hit on each end {@code n = ceil(beta / theta) + 1}; straight edge {@code n = ceil(L / p) + 1}. Range: pitch
 * from 0.5 t (below, slivers and side load; common practice) up to r (above, the rest between two hits is no longer small
 * against the punch). Source: plane geometry. Worked example: corner R 5, r 3, h 0.05 over 90 degrees: 19.8895 degrees a step,
 * 6 hits.
 */
public final class Nibbling {

    private Nibbling() {
    }

    /** Hits with one on each end of a straight edge of length L. */
    public static int straightHits(double lengthMm, double r, double h) {
        return HitCount.steps(lengthMm, Scallop.straightPitchMm(r, h)) + 1;
    }

    /** Hits around a whole opening of radius R; one where the punch fills it. */
    public static int openingHits(double arc, double r, double h) {
        return arc - r < 1e-9 ? 1 : HitCount.steps(2 * Math.PI, Scallop.insideStepRad(arc, r, h));
    }

    /** Hits around a whole disc of radius R. */
    public static int discHits(double arc, double r, double h) {
        return HitCount.steps(2 * Math.PI, Scallop.outsideStepRad(arc, r, h));
    }

    /** Hits with one on each end of an open inside arc; one where the punch fills it. */
    public static int insideArcHits(double arc, double angleDeg, double r, double h) {
        return arc - r < 1e-9 ? 1 : HitCount.steps(Math.toRadians(angleDeg), Scallop.insideStepRad(arc, r, h)) + 1;
    }

    /** Hits with one on each end of an open outside arc. */
    public static int outsideArcHits(double arc, double angleDeg, double r, double h) {
        return HitCount.steps(Math.toRadians(angleDeg), Scallop.outsideStepRad(arc, r, h)) + 1;
    }

    /** A warning where the pitch is below half the thickness. */
    public static List<Finding> check(String subject, double pitchMm, double thicknessMm) {
        return pitchMm >= 0.5 * thicknessMm - 1e-9 ? List.of()
                : List.of(Finding.of(PressReason.PITCH_SMALL, subject, pitchMm, 0.5 * thicknessMm, thicknessMm));
    }
}
