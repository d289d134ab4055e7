// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.feature;

import java.util.ArrayList;
import java.util.List;

import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Segment;

/**
 * An equilateral triangle from its three drawn corners by the similarity that takes a triangle of side 1 nearest to them (least
 * squares, closed form). Corners off by e leave the side within sqrt(3) e; distances of the sides from the centre would allow
 * 2 sqrt(3) e, since a side is that many times as long as the inscribed radius. Source of the closed form: Umeyama, IEEE
 * Transactions on Pattern Analysis and Machine Intelligence 13 (1991) 376-380, in the plane (from memory).
 */
final class TriangleFit {

    private TriangleFit() {
    }

    /**
     * @param reachMm how far a drawn corner may lie from that of the rough match
     * @return null when not just one drawn point lies at each corner
     */
    static Match of(Contour drawn, Match rough, double reachMm) {
        Contour ideal = IdealContours.of(rough);
        if (ideal == null) {
            return null;
        }
        List<Point> corners = new ArrayList<>();
        for (Segment side : ideal.segments()) {
            List<Point> near = drawn.segments().stream().map(Segment::start).filter(p -> p.distance(side.start()) <= reachMm)
                    .toList();
            if (near.size() != 1) {
                return null;
            }
            corners.add(near.getFirst());
        }
        return similar(rough, ideal, corners);
    }

    private static Match similar(Match rough, Contour ideal, List<Point> corners) {
        Point center = corners.get(0).plus(corners.get(1)).plus(corners.get(2)).times(1.0 / 3);
        double along = 0;
        double across = 0;
        double square = 0;
        for (int i = 0; i < 3; i++) {
            Point from = ideal.segments().get(i).start().minus(rough.center());
            Point to = corners.get(i).minus(center);
            along += from.dot(to);
            across += from.cross(to);
            square += from.dot(from);
        }
        double side = rough.lengthMm() * Math.hypot(along, across) / square;
        double turnDeg = Math.toDegrees(Math.atan2(across, along));
        return new Match(rough.kind(), center, rough.angleDeg() + turnDeg, side, side, 0);
    }
}
