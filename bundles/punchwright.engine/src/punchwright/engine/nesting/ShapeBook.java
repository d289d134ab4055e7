// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import java.util.ArrayList;
import java.util.List;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.simplify.DouglasPeuckerSimplifier;

import punchwright.engine.geometry.Arc;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Flattening;
import punchwright.engine.geometry.Point;
import punchwright.engine.nesting.shapes.Piece;

/**
 * Outer contours grown by half the web, as polygons never smaller than the true ones. Openings count as filled: their waste
 * is cut up by the hits that make them, so that no other part can lie there.
 */
final class ShapeBook {

    /** Shapes nearer than this count as touching, mm. */
    static final double HAIR_MM = 1e-4;

    private static final double CHORD_MM = 0.05;
    private static final double COARSE_MM = 0.3;
    private static final int MOST_POINTS = 120;

    private final double webMm;
    private final List<Piece> pieces = new ArrayList<>();

    ShapeBook(List<BoxPart> parts) {
        webMm = parts.stream().mapToDouble(p -> p.part().webMm()).max().orElse(0);
        parts.forEach(p -> pieces.add(new Piece(List.<double[][]>of(grown(p.part().shape().outer())),
                p.part().anglesDeg(), HAIR_MM)));
    }

    double webMm() {
        return webMm;
    }

    Piece piece(int part) {
        return pieces.get(part);
    }

    private double[][] grown(Contour outer) {
        boolean straight = outer.segments().stream().noneMatch(s -> s instanceof Arc);
        double chord = straight ? 0 : CHORD_MM;
        Polygon polygon = new GeometryFactory().createPolygon(ring(Flattening.points(outer, CHORD_MM)));
        if (polygon.getNumPoints() > MOST_POINTS) {
            chord += COARSE_MM;
            Geometry simple = DouglasPeuckerSimplifier.simplify(polygon, COARSE_MM);
            polygon = simple instanceof Polygon p && !p.isEmpty() ? p : polygon;
        }
        double by = webMm / 2 + chord;
        if (by > 0) {
            BufferParameters mitred = new BufferParameters(2, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, 3);
            Geometry g = BufferOp.bufferOp(polygon, by, mitred);
            polygon = g instanceof Polygon p ? p : (Polygon) g.convexHull();
        }
        Coordinate[] c = polygon.getExteriorRing().getCoordinates();
        double[][] points = new double[c.length - 1][];
        for (int i = 0; i < points.length; i++) {
            points[i] = new double[] {c[i].x, c[i].y};
        }
        return points;
    }

    private static Coordinate[] ring(List<Point> points) {
        Coordinate[] c = new Coordinate[points.size() + 1];
        for (int i = 0; i < points.size(); i++) {
            c[i] = new Coordinate(points.get(i).x(), points.get(i).y());
        }
        c[points.size()] = c[0].copy();
        return c;
    }
}
