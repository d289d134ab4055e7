// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.ArrayList;
import java.util.List;

import org.locationtech.jts.geom.Geometry;

import punchwright.engine.geometry.Arc;
import punchwright.engine.geometry.Bounds;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Flattening;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Pose;

/** One tool's punch contours prepared for many questions: does a hit cover this point, what polygon does it cut. */
final class Footprint {

    static final double CHORD_MM = 0.001;

    private final List<Contour> contours;
    private final List<List<Point>> polygons;
    private final Bounds bounds;
    private final double radiusMm;

    Footprint(Tool tool) {
        contours = ToolFootprint.of(tool);
        polygons = contours.stream().map(c -> Flattening.points(c, CHORD_MM)).toList();
        bounds = contours.stream().map(Contour::bounds).reduce(Bounds.EMPTY, Bounds::including);
        radiusMm = ToolFootprint.circumscribedDiameterMm(tool) / 2;
    }

    double radiusMm() {
        return radiusMm;
    }

    /** Whether the hit cuts the point or passes within {@code toleranceMm} of it. */
    boolean covers(PartHit hit, Point p, double toleranceMm) {
        Point d = p.minus(hit.at());
        if (d.norm() > radiusMm + toleranceMm) {
            return false;
        }
        Point own = new Pose(0, 0, -hit.angleDeg(), false).apply(d);
        if (!bounds.grown(toleranceMm).contains(own)) {
            return false;
        }
        for (int i = 0; i < contours.size(); i++) {
            if (within(i, own, toleranceMm)) {
                return true;
            }
        }
        return false;
    }

    private boolean within(int i, Point own, double toleranceMm) {
        Contour c = contours.get(i);
        if (c.segments().size() == 1 && c.segments().getFirst() instanceof Arc arc) {
            return own.distance(arc.center()) <= arc.radiusMm() + toleranceMm;
        }
        return Flattening.contains(polygons.get(i), own) || c.distance(own) <= toleranceMm;
    }

    /** Corners of the punch (arcs as chords) where the hit sets them. */
    List<Point> points(PartHit hit) {
        Pose pose = Pose.at(hit.at().x(), hit.at().y(), hit.angleDeg());
        List<Point> all = new ArrayList<>();
        polygons.forEach(polygon -> polygon.forEach(p -> all.add(pose.apply(p))));
        return all;
    }

    /** The area cut by the hit. */
    Geometry area(PartHit hit) {
        Pose pose = Pose.at(hit.at().x(), hit.at().y(), hit.angleDeg());
        return Areas.union(polygons.stream().map(p -> Areas.polygon(p.stream().map(pose::apply).toList())).toList());
    }
}
