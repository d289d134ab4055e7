// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.ArrayList;
import java.util.List;

import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;

import punchwright.engine.geometry.Bounds;
import punchwright.engine.geometry.BoxIndex;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.InsideTest;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Segment;
import punchwright.engine.geometry.Shape;

/**
 * Guards the part: a hit may touch its edge but not enter it by more than a tolerance.
 *
 * <p>Round punches by exact distance from the axis to the part's edge; all others with the JTS library: the part less a rim of
 * the
 * tolerance must not meet the punch.
 */
final class PartGuard {

    /** Largest depth a nibbling or slitting hit may enter the part, mm. */
    static final double TOLERANCE_MM = 0.008;

    private final Shape shape;
    private final PreparedGeometry core;
    private final List<Segment> edges = new ArrayList<>();
    private final BoxIndex index;
    private final InsideTest outer;
    private final List<InsideTest> holes;

    PartGuard(Shape shape) {
        this.shape = shape;
        core = PreparedGeometryFactory.prepare(Areas.of(shape).buffer(-TOLERANCE_MM));
        edges.addAll(shape.outer().segments());
        shape.holes().forEach(h -> edges.addAll(h.segments()));
        index = new BoxIndex(edges.stream().map(Segment::bounds).toList());
        outer = new InsideTest(shape.outer(), Footprint.CHORD_MM);
        holes = shape.holes().stream().map((Contour h) -> new InsideTest(h, Footprint.CHORD_MM)).toList();
    }

    Shape shape() {
        return shape;
    }

    /** Whether the hit leaves the part whole. */
    boolean clear(Footprint footprint, PartHit hit) {
        return footprint.round() ? clear(hit.at(), footprint.radiusMm() - TOLERANCE_MM)
                : footprint.punches(hit).stream().noneMatch(core::intersects);
    }

    boolean clear(Footprint footprint, List<PartHit> hits) {
        return hits.stream().allMatch(h -> clear(footprint, h));
    }

    private boolean clear(Point axis, double radius) {
        boolean[] near = new boolean[1];
        index.query(Bounds.EMPTY.including(axis).grown(radius), i -> near[0] |= edges.get(i).distance(axis) < radius);
        return !near[0] && !inPart(axis);
    }

    private boolean inPart(Point p) {
        return outer.contains(p) && holes.stream().noneMatch(h -> h.contains(p));
    }

    /** How far a hit reaches beyond the outer contour, mm; 0 inside. For round punches an upper bound near concave outlines. */
    double reachMm(Footprint footprint, PartHit hit) {
        if (footprint.round()) {
            double distance = shape.outer().distance(hit.at());
            return Math.max(0, footprint.radiusMm() + (outer.contains(hit.at()) ? -distance : distance));
        }
        double reach = 0;
        for (Point p : footprint.corners(hit)) {
            if (!outer.contains(p)) {
                reach = Math.max(reach, shape.outer().distance(p));
            }
        }
        return reach;
    }
}
