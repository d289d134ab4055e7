// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing;

import java.util.ArrayList;
import java.util.List;

import punchwright.engine.finding.FindingCollector;
import punchwright.engine.geometry.Arc;
import punchwright.engine.geometry.BoxIndex;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Shape;

/**
 * Tells of discs that lie in a round hole of the same centre: by nesting they are parts of their own, but two circles about one
 * centre are also how countersinks, threads and press-in nuts are drawn. Common practice, no source.
 */
final class DiscsInHoles {

    private static final double SAME_CENTRE_MM = 0.05;
    private static final double ROUND_MM = 0.01;
    /** A disc much smaller than its hole is rather a washer's or a spacer's. */
    private static final double LEAST_SHARE = 0.4;

    private DiscsInHoles() {
    }

    static void report(List<Shape> shapes, FindingCollector findings) {
        List<Contour> discs = shapes.stream().filter(s -> s.holes().isEmpty()).map(Shape::outer)
                .filter(DiscsInHoles::isRound).toList();
        if (discs.isEmpty()) {
            return;
        }
        List<Contour> holes = new ArrayList<>();
        shapes.forEach(s -> s.holes().stream().filter(DiscsInHoles::isRound).forEach(holes::add));
        BoxIndex index = new BoxIndex(holes.stream().map(Contour::bounds).toList());
        for (Contour disc : discs) {
            index.query(disc.bounds(), h -> compare(disc, holes.get(h), findings));
        }
    }

    private static void compare(Contour disc, Contour hole, FindingCollector findings) {
        Point centre = centre(disc);
        double own = disc.circleDiameterMm(ROUND_MM);
        double around = hole.circleDiameterMm(ROUND_MM);
        if (centre.distance(centre(hole)) <= SAME_CENTRE_MM && own < around && own >= LEAST_SHARE * around) {
            findings.addAt(centre, DrawingReason.DISC_IN_HOLE, own, around, centre.x(), centre.y());
        }
    }

    private static boolean isRound(Contour c) {
        return c.circleDiameterMm(ROUND_MM) > 0;
    }

    private static Point centre(Contour round) {
        return ((Arc) round.segments().getFirst()).center();
    }
}
