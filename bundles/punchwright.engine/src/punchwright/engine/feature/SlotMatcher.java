// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.feature;

import java.util.List;

import punchwright.engine.geometry.Arc;
import punchwright.engine.geometry.CircleFit;
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

    /** The centre line goes through the centres of the ends and half way between the middles of the long sides. */
    private static Match arcSlot(Contour contour) {
        List<Arc> arcs = Parts.of(contour).arcs();
        int hollow = Parts.of(contour).pattern().indexOf('V');
        Arc outer = arcs.get((hollow + 2) % 4);
        Arc end = arcs.get((hollow + 1) % 4);
        Arc begin = arcs.get((hollow + 3) % 4);
        Point middle = outer.pointAt(0.5).plus(arcs.get(hollow).pointAt(0.5)).times(0.5);
        CircleFit line = CircleFit.of(List.of(begin.center(), middle, end.center()));
        if (line == null) {
            return null;
        }
        Point a = begin.center().minus(line.center());
        Point b = end.center().minus(line.center());
        double sweep = Math.abs(Math.atan2(a.cross(b), a.dot(b)));
        sweep = Math.abs(outer.sweepRad()) > Math.PI ? 2 * Math.PI - sweep : sweep;
        double width = begin.radiusMm() + end.radiusMm();
        double direction = middle.minus(line.center()).angleRad();
        return new Match(FeatureKind.ARC_SLOT, line.center().plus(Point.polar(line.radiusMm(), direction)),
                Math.toDegrees(direction) + 90, line.radiusMm() * sweep + width, width, line.radiusMm());
    }
}
