// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import java.util.ArrayList;
import java.util.List;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;

import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Flattening;
import punchwright.engine.geometry.Point;

/** Area of an outline with its opening filled, grown on all sides. */
final class GrownArea {

    private static final double CHORD_MM = 1e-3;

    private GrownArea() {
    }

    /**
     * Never more than the true area: arcs are chords, corners of the offset are chords, and what chords of hollow arcs add is
     * taken off again. 0 for an outline that crosses itself.
     */
    static double atLeast(Contour outer, double byMm) {
        List<Coordinate> ring = new ArrayList<>();
        for (Point p : Flattening.points(outer, CHORD_MM)) {
            ring.add(new Coordinate(p.x(), p.y()));
        }
        ring.add(ring.get(0).copy());
        Polygon polygon = new GeometryFactory().createPolygon(ring.toArray(Coordinate[]::new));
        return polygon.isValid() ? BufferOp.bufferOp(polygon, byMm, 16).getArea() * (1 - 1e-6) - CHORD_MM * outer.lengthMm() : 0;
    }
}
