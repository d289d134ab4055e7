// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.List;

import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;

import punchwright.engine.geometry.Flattening;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Shape;

/**
 * Guards the part: a hit may touch its edge but not enter it by more than a tolerance. A check with the JTS library: the part
 * less a rim of the tolerance must not meet the punch.
 */
final class PartGuard {

    /** Largest depth a nibbling or slitting hit may enter the part, mm. */
    static final double TOLERANCE_MM = 0.008;

    private final PreparedGeometry core;
    private final Shape shape;
    private final List<Point> outer;

    PartGuard(Shape shape) {
        this(shape, TOLERANCE_MM);
    }

    PartGuard(Shape shape, double toleranceMm) {
        this.shape = shape;
        outer = Flattening.points(shape.outer(), Footprint.CHORD_MM);
        core = PreparedGeometryFactory.prepare(Areas.of(shape).buffer(-toleranceMm));
    }

    Shape shape() {
        return shape;
    }

    /** Whether the hit leaves the part whole. */
    boolean clear(Footprint footprint, PartHit hit) {
        Geometry area = footprint.area(hit);
        return !core.intersects(area);
    }

    boolean clear(Footprint footprint, List<PartHit> hits) {
        return hits.stream().allMatch(h -> clear(footprint, h));
    }

    /** How far a hit reaches beyond the outer contour, mm; 0 inside. */
    double reachMm(Footprint footprint, PartHit hit) {
        double reach = 0;
        for (Point p : footprint.points(hit)) {
            if (!Flattening.contains(outer, p)) {
                reach = Math.max(reach, shape.outer().distance(p));
            }
        }
        return reach;
    }
}
