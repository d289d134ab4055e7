// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.ArrayList;
import java.util.List;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Flattening;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Shape;

/**
 * The outside look at a list of operations, by the JTS library alone: how deep does any hit enter the part, and how much of the
 * part's edge is left uncut?
 */
record CutCheck(double deepestMm, double uncutMm, double jointsMm, int hits) {

    private static final GeometryFactory F = new GeometryFactory();

    static CutCheck of(Shape shape, OperationList list, double scallopMm) {
        List<Geometry> cuts = new ArrayList<>();
        double joints = 0;
        for (Operation op : list.operations()) {
            joints += op.joints().stream().mapToDouble(MicroJoint::widthMm).sum();
            for (PartHit hit : op.hits()) {
                ToolFootprint.at(op.tool(), hit).forEach(c -> cuts.add(polygon(c)));
            }
        }
        Geometry cut = OverlayNGRobust.union(cuts);
        Geometry part = polygon(shape.outer());
        for (Contour hole : shape.holes()) {
            part = OverlayNGRobust.overlay(part, polygon(hole), OverlayNG.DIFFERENCE);
        }
        Geometry left = OverlayNGRobust.overlay(part.getBoundary(), cut.buffer(scallopMm + 0.01, 16), OverlayNG.DIFFERENCE);
        return new CutCheck(deepest(part, cut), left.getLength(), joints, cuts.size());
    }

    /** Depth by bisection of a rim: the part less a rim of the depth does not meet the cut. */
    private static double deepest(Geometry part, Geometry cut) {
        double low = 0;
        double high = 2;
        while (high - low > 0.0005) {
            double mid = (low + high) / 2;
            if (part.buffer(-mid).intersects(cut)) {
                low = mid;
            } else {
                high = mid;
            }
        }
        return high;
    }

    private static Geometry polygon(Contour c) {
        List<Point> points = Flattening.points(c, 0.0005);
        Coordinate[] ring = new Coordinate[points.size() + 1];
        for (int i = 0; i < points.size(); i++) {
            ring[i] = new Coordinate(points.get(i).x(), points.get(i).y());
        }
        ring[points.size()] = ring[0];
        return F.createPolygon(ring);
    }
}
