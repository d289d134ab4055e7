// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.List;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Flattening;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Shape;

/** Areas of the JTS library from our contours, for checks; arcs become chords. */
final class Areas {

    static final GeometryFactory FACTORY = new GeometryFactory();

    private Areas() {
    }

    static Polygon polygon(List<Point> points) {
        return FACTORY.createPolygon(ring(points));
    }

    static Polygon of(Contour contour) {
        return polygon(Flattening.points(contour, Footprint.CHORD_MM));
    }

    static Polygon of(Shape shape) {
        return FACTORY.createPolygon(ring(Flattening.points(shape.outer(), Footprint.CHORD_MM)), shape.holes().stream()
                .map(h -> ring(Flattening.points(h, Footprint.CHORD_MM))).toArray(LinearRing[]::new));
    }

    static Geometry union(List<? extends Geometry> areas) {
        if (areas.isEmpty()) {
            return FACTORY.createPolygon();
        }
        return areas.size() == 1 ? areas.getFirst() : OverlayNGRobust.union(List.copyOf(areas));
    }

    /** The first less the second; the robust overlay, since slivers at machine precision are common here. */
    static Geometry difference(Geometry a, Geometry b) {
        return OverlayNGRobust.overlay(a, b, OverlayNG.DIFFERENCE);
    }

    private static LinearRing ring(List<Point> points) {
        Coordinate[] c = new Coordinate[points.size() + 1];
        for (int i = 0; i < points.size(); i++) {
            c[i] = new Coordinate(points.get(i).x(), points.get(i).y());
        }
        c[points.size()] = c[0].copy();
        return FACTORY.createLinearRing(c);
    }
}
