// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import java.util.ArrayList;
import java.util.List;

import org.locationtech.jts.geom.Coordinate;

import punchwright.engine.geometry.Arc;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Segment;

/**
 * Contours as polygons that hold all of the material: arcs that bulge out of it become tangents, arcs that bulge into it chords.
 * Nothing has to be grown for the arithmetic of arcs then, and straight edges stay where they are.
 */
final class OuterPolygon {

    /** Longest step on an arc, in radians; the fewest tangents of a circle are eight. */
    private static final double WIDEST_RAD = Math.PI / 4;

    private OuterPolygon() {
    }

    /**
     * Closed ring of a contour, the first point repeated at the end.
     *
     * @param contour material on its left: an outer contour counter-clockwise, a hole clockwise
     * @param offMm   largest distance of the polygon from an arc
     */
    static Coordinate[] ring(Contour contour, double offMm) {
        List<Coordinate> out = new ArrayList<>();
        for (Segment s : contour.segments()) {
            out.add(new Coordinate(s.start().x(), s.start().y()));
            if (s instanceof Arc arc) {
                addInner(arc, offMm, out);
            }
        }
        out.add(out.get(0).copy());
        return out.toArray(Coordinate[]::new);
    }

    private static void addInner(Arc arc, double offMm, List<Coordinate> out) {
        double r = arc.radiusMm();
        double half = arc.sweepRad() > 0 ? Math.acos(r / (r + offMm)) : Math.acos(Math.max(0, 1 - offMm / r));
        int pieces = Math.max(1, (int) Math.ceil(Math.abs(arc.sweepRad()) / Math.min(WIDEST_RAD, 2 * half) - 1e-9));
        double step = arc.sweepRad() / pieces;
        boolean tangents = step > 0;
        double radius = tangents ? r / Math.cos(step / 2) : r;
        for (int i = tangents ? 0 : 1; i < pieces; i++) {
            double angle = arc.startRad() + (tangents ? i + 0.5 : i) * step;
            out.add(new Coordinate(arc.center().x() + radius * Math.cos(angle), arc.center().y() + radius * Math.sin(angle)));
        }
    }
}
