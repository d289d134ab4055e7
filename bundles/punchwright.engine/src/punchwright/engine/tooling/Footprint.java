// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.ArrayList;
import java.util.List;

import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

import punchwright.engine.geometry.Bounds;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Flattening;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Pose;

/** One tool's punch contours prepared for many questions: does a hit cover this point, what polygon does it cut. */
final class Footprint {

    static final double CHORD_MM = 0.001;
    private static final double CORNER_CHORD_MM = 0.02;

    private final List<Contour> contours;
    private final List<List<Point>> polygons;
    private final Bounds bounds;
    private final List<List<Point>> corners;
    private final double radiusMm;
    private final boolean round;
    private final boolean box;

    Footprint(Tool tool) {
        contours = ToolFootprint.of(tool);
        polygons = contours.stream().map(c -> Flattening.points(c, CHORD_MM)).toList();
        bounds = contours.stream().map(Contour::bounds).reduce(Bounds.EMPTY, Bounds::including);
        corners = contours.stream().map(c -> Flattening.points(c, CORNER_CHORD_MM)).toList();
        round = tool.shape() == ToolShape.ROUND;
        box = contours.size() == 1 && contours.getFirst().segments().size() == 4 && Math.abs(contours.getFirst().areaMm2()
                - bounds.width() * bounds.height()) < 1e-9;
        radiusMm = ToolFootprint.circumscribedDiameterMm(tool) / 2;
    }

    /** Whether it is one circle about the axis. */
    boolean round() {
        return round;
    }

    double radiusMm() {
        return radiusMm;
    }

    /** Whether the hit cuts the point or passes within {@code toleranceMm} of it. */
    boolean covers(PartHit hit, Point p, double toleranceMm) {
        double dx = p.x() - hit.at().x();
        double dy = p.y() - hit.at().y();
        double reach = radiusMm + toleranceMm;
        if (round || dx * dx + dy * dy > reach * reach) {
            return dx * dx + dy * dy <= reach * reach;
        }
        Point d = new Point(dx, dy);
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
        if (box) {
            return true;
        }
        return Flattening.contains(polygons.get(i), own) || c.distance(own) <= toleranceMm;
    }

    /** Corners of the punch (arcs as a few chords) where the hit sets them. */
    List<Point> corners(PartHit hit) {
        Pose pose = Pose.at(hit.at().x(), hit.at().y(), hit.angleDeg());
        List<Point> all = new ArrayList<>();
        corners.forEach(polygon -> polygon.forEach(p -> all.add(pose.apply(p))));
        return all;
    }

    /** The area cut by the hit, arcs within {@link #CHORD_MM}. */
    Geometry area(PartHit hit) {
        return area(hit, polygons);
    }

    /** The area cut by the hit, arcs as a few chords: for slugs. */
    Geometry coarseArea(PartHit hit) {
        return area(hit, corners);
    }

    /** The area of each punch by itself. */
    List<Polygon> punches(PartHit hit) {
        return punches(hit, polygons);
    }

    private static Geometry area(PartHit hit, List<List<Point>> polygons) {
        return Areas.union(punches(hit, polygons));
    }

    private static List<Polygon> punches(PartHit hit, List<List<Point>> polygons) {
        Pose pose = Pose.at(hit.at().x(), hit.at().y(), hit.angleDeg());
        return polygons.stream().map(p -> Areas.polygon(p.stream().map(pose::apply).toList())).toList();
    }
}
