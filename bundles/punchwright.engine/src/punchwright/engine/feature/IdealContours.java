// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.feature;

import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Openings;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Pose;

/** The exact contour of an opening of given kind, place and sizes, counter-clockwise; see {@link Openings} for angle 0. */
public final class IdealContours {

    private IdealContours() {
    }

    /**
     * @param cornerRadiusMm as in {@link Feature}: corner radius, radius of a keyhole's round, radius of an arc slot's
     *                       centre line
     * @return null when the kind has no ideal form or the sizes do not make one
     */
    public static Contour of(FeatureKind kind, Point center, double angleDeg, double lengthMm, double widthMm,
            double cornerRadiusMm) {
        Contour own = switch (kind) {
            case ROUND -> Openings.round(lengthMm);
            case SQUARE, RECTANGLE -> Openings.rectangle(lengthMm, widthMm, 0);
            case ROUNDED_RECTANGLE, OBROUND -> Openings.rectangle(lengthMm, widthMm, cornerRadiusMm);
            case SINGLE_FLAT -> Openings.singleFlat(lengthMm, widthMm);
            case DOUBLE_FLAT -> Openings.doubleFlat(lengthMm, widthMm);
            case HEXAGON -> Openings.hexagon(lengthMm);
            case TRIANGLE -> Openings.triangle(lengthMm);
            case KEYHOLE -> Openings.keyhole(lengthMm, widthMm, cornerRadiusMm);
            case ARC_SLOT -> Openings.arcSlot(lengthMm, widthMm, cornerRadiusMm);
            default -> null;
        };
        return own == null ? null : own.moved(Pose.at(center.x(), center.y(), angleDeg));
    }

    static Contour of(Match m) {
        return of(m.kind(), m.center(), m.angleDeg(), m.lengthMm(), m.widthMm(), m.cornerRadiusMm());
    }
}
