// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.feature;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import punchwright.engine.geometry.Arc;
import punchwright.engine.geometry.CircleFit;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Intersections;
import punchwright.engine.geometry.Line;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Segment;

/** Keyhole (a round with a narrower slot) and the slot along an arc. */
final class SlotMatcher implements OpeningMatcher {

    /** How far an end may be from a half circle. */
    private static final double END_OFF_RAD = Math.toRadians(40);
    /** A centre line that bends by less is straight. */
    private static final double STRAIGHT_MM = 0.04;

    @Override
    public Match match(Contour contour) {
        Parts parts = Parts.of(contour);
        if (parts.isTurnOf("LALA") && !isLikeObround(parts)) {
            return keyhole(parts);
        }
        return arcSlot(contour, parts);
    }

    private static boolean isLikeObround(Parts parts) {
        return Math.abs(parts.arcs().get(0).radiusMm() - parts.arcs().get(1).radiusMm()) < 0.01 * parts.arcs().get(0).radiusMm();
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

    /** Two ends turn by half a circle; the long sides may be drawn in any way. */
    private static Match arcSlot(Contour contour, Parts parts) {
        List<Arc> ends = parts.arcs().stream().filter(a -> Math.abs(a.sweepRad() - Math.PI) < END_OFF_RAD)
                .sorted(Comparator.comparingDouble(Arc::radiusMm)).limit(2).toList();
        if (ends.size() != 2 || Math.abs(ends.get(0).radiusMm() - ends.get(1).radiusMm()) > 0.1 * ends.get(0).radiusMm()) {
            return null;
        }
        Point a = ends.get(0).center();
        Point b = ends.get(1).center();
        List<Point> sides = crossings(contour, a.plus(b).times(0.5), b.minus(a).left().unit());
        if (sides.size() == 2 && sides.get(0).plus(sides.get(1)).times(0.5).distance(a.plus(b).times(0.5)) < STRAIGHT_MM) {
            double width = ends.get(0).radiusMm() + ends.get(1).radiusMm();
            return new Match(FeatureKind.OBROUND, a.plus(b).times(0.5), Math.toDegrees(b.minus(a).angleRad()),
                    a.distance(b) + width, width, width / 2);
        }
        CircleFit line = sides.size() != 2 ? null : CircleFit.of(List.of(a, sides.get(0).plus(sides.get(1)).times(0.5), b));
        return line == null ? null : arcSlot(line, a, b, sides, ends.get(0).radiusMm() + ends.get(1).radiusMm());
    }

    /** Where the line through a point, in a direction, meets the contour. */
    private static List<Point> crossings(Contour contour, Point at, Point direction) {
        double reach = contour.lengthMm();
        Line line = new Line(at.minus(direction.times(reach)), at.plus(direction.times(reach)));
        List<Point> found = new ArrayList<>();
        for (Segment s : contour.segments()) {
            for (Point p : Intersections.of(line, s, 1e-6)) {
                if (found.stream().noneMatch(q -> q.distance(p) < 1e-3)) {
                    found.add(p);
                }
            }
        }
        return found;
    }

    /** The centre line goes through the centres of the ends and half way between the long sides. */
    private static Match arcSlot(CircleFit line, Point a, Point b, List<Point> sides, double width) {
        Point middle = sides.get(0).plus(sides.get(1)).times(0.5).minus(line.center());
        Point armA = a.minus(line.center());
        Point armB = b.minus(line.center());
        double half = Math.abs(Math.atan2(middle.cross(armA), middle.dot(armA)))
                + Math.abs(Math.atan2(middle.cross(armB), middle.dot(armB)));
        double direction = middle.angleRad();
        return new Match(FeatureKind.ARC_SLOT, line.center().plus(Point.polar(line.radiusMm(), direction)),
                Math.toDegrees(direction) + 90, line.radiusMm() * half + width, width, line.radiusMm());
    }
}
