// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.feature;

import java.util.List;

import punchwright.engine.geometry.Arc;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Point;

/** Keyhole (a round with a narrower slot) and the slot along an arc. */
final class SlotMatcher implements OpeningMatcher {

    @Override
    public Match match(Contour contour) {
        Parts parts = Parts.of(contour);
        if (parts.isTurnOf("LALA")) {
            return keyhole(parts);
        }
        return parts.isTurnOf("AAAV") ? arcSlot(contour) : null;
    }

    private static Match keyhole(Parts parts) {
        Arc a = parts.arcs().get(0);
        Arc b = parts.arcs().get(1);
        Arc round = a.radiusMm() >= b.radiusMm() ? a : b;
        Arc end = round == a ? b : a;
        Point axis = end.center().minus(round.center());
        return new Match(FeatureKind.KEYHOLE, round.center(), Math.toDegrees(axis.angleRad()),
                round.radiusMm() + axis.norm() + end.radiusMm(), 2 * end.radiusMm(), round.radiusMm());
    }

    private static Match arcSlot(Contour contour) {
        List<Arc> arcs = Parts.of(contour).arcs();
        int hollow = Parts.of(contour).pattern().indexOf('V');
        Arc inner = arcs.get(hollow);
        Arc outer = arcs.get((hollow + 2) % 4);
        double width = outer.radiusMm() - inner.radiusMm();
        double radius = (outer.radiusMm() + inner.radiusMm()) / 2;
        Point center = outer.center().plus(inner.center()).times(0.5);
        double sweep = (Math.abs(outer.sweepRad()) + Math.abs(inner.sweepRad())) / 2;
        double middle = outer.startRad() + outer.sweepRad() / 2;
        return new Match(FeatureKind.ARC_SLOT, center.plus(Point.polar(radius, middle)), Math.toDegrees(middle) + 90,
                radius * sweep + width, width, radius);
    }
}
