// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

import punchwright.engine.geometry.Bounds;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Pose;
import punchwright.engine.nesting.shapes.OuterSimplifier;
import punchwright.engine.nesting.shapes.Piece;

/**
 * Outer contours grown by half the web, as polygons never smaller than the true ones and with as few corners as a tolerance
 * allows. Openings count as filled unless the part says that others may lie in them.
 */
final class ShapeBook {

    /** Shapes nearer than this count as touching, mm. */
    static final double HAIR_MM = 1e-4;

    /** How far the polygon of an arc may lie outside it, mm. */
    private static final double ARC_MM = 0.02;
    /** How far sides move out for fewer corners: a share of the part's size, and at most. */
    private static final double SHARE = 5e-4;
    private static final double MOST_MM = 0.25;
    /** Polygons with no more corners stay as they are. */
    private static final int FEW_POINTS = 24;
    /** The buffer cuts corners of turns below 0.05 rad: by the share 1 - cos 0.05 at most. */
    private static final double SMALL_TURNS = 1 / Math.cos(0.05);
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private final double webMm;
    private final List<Piece> pieces = new ArrayList<>();

    ShapeBook(List<BoxPart> parts) {
        webMm = parts.stream().mapToDouble(p -> p.part().webMm()).max().orElse(0);
        parts.forEach(p -> pieces.add(new Piece(rings(p.part()), p.part().anglesDeg(), HAIR_MM)));
    }

    double webMm() {
        return webMm;
    }

    Piece piece(int part) {
        return pieces.get(part);
    }

    List<Piece> pieces() {
        return List.copyOf(pieces);
    }

    private List<double[][]> rings(NestPart part) {
        List<double[][]> rings = new ArrayList<>();
        rings.add(grown(part));
        for (UsableOpening o : part.openings()) {
            double[][] room = room(part.shape().holes().get(o.hole()), Math.max(o.clearMm(), webMm));
            if (room.length > 2) {
                rings.add(room);
            }
        }
        return rings;
    }

    /** Where grown parts may lie in an opening; no points where none may. */
    private double[][] room(Contour hole, double clearMm) {
        Polygon polygon = FACTORY.createPolygon(OuterPolygon.ring(hole, ARC_MM));
        if (!polygon.isValid()) {
            return new double[0][];
        }
        Geometry g = BufferOp.bufferOp(polygon, -(clearMm - webMm / 2) * SMALL_TURNS, mitred());
        if (!(g instanceof Polygon room) || room.isEmpty() || room.getNumInteriorRing() > 0) {
            return new double[0][];
        }
        double[][] points = points(room);
        double[][] clockwise = new double[points.length][];
        for (int i = 0; i < points.length; i++) {
            clockwise[i] = points[points.length - 1 - i];
        }
        return points.length > FEW_POINTS ? OuterSimplifier.of(clockwise, MOST_MM / 2) : clockwise;
    }

    private double[][] grown(NestPart part) {
        Contour outer = part.shape().outer();
        double[][] points = points(grown(FACTORY.createPolygon(OuterPolygon.ring(outer, ARC_MM))));
        if (points.length > FEW_POINTS) {
            Bounds b = outer.bounds();
            double tolerance = Math.min(MOST_MM, SHARE * Math.hypot(b.width(), b.height()));
            points = OuterSimplifier.of(points, tolerance);
        }
        return clipped(points, part);
    }

    /** An outline that crosses itself is covered by its area and its line. */
    private Polygon grown(Polygon polygon) {
        if (!polygon.isValid()) {
            double by = Math.max(webMm / 2, HAIR_MM) / Math.cos(Math.PI / 32);
            Geometry line = BufferOp.bufferOp(polygon.getExteriorRing(), by);
            Geometry area = BufferOp.bufferOp(GeometryFixer.fix(polygon), by);
            return largest(line.union(area), polygon);
        }
        double by = polygon.getNumPoints() > FEW_POINTS ? webMm / 2 * SMALL_TURNS : webMm / 2;
        return webMm > 0 ? largest(BufferOp.bufferOp(polygon, by, mitred()), polygon) : polygon;
    }

    private static BufferParameters mitred() {
        BufferParameters p = new BufferParameters(2, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, 3);
        p.setSimplifyFactor(1e-3);
        return p;
    }

    /** Without the corners that reach beyond the grown box of the part at its angles: no true edge does. */
    private double[][] clipped(double[][] points, NestPart part) {
        Polygon polygon = FACTORY.createPolygon(ring(points));
        List<Double> done = new ArrayList<>();
        for (double angle : part.anglesDeg()) {
            double own = ((angle % 90) + 90) % 90;
            if (done.stream().noneMatch(d -> Math.abs(d - own) < 1e-9) && done.size() < 2) {
                done.add(own);
                polygon = largest(polygon.intersection(box(part.shape().outer(), own)), polygon);
            }
        }
        return points(polygon);
    }

    private Polygon box(Contour outer, double angleDeg) {
        Bounds b = outer.moved(Pose.at(0, 0, angleDeg)).bounds();
        double by = webMm / 2;
        double[][] corners = {{b.minX() - by, b.minY() - by}, {b.maxX() + by, b.minY() - by}, {b.maxX() + by, b.maxY() + by},
            {b.minX() - by, b.maxY() + by}};
        Pose back = Pose.at(0, 0, -angleDeg);
        return FACTORY.createPolygon(ring(Arrays.stream(corners).map(c -> back.apply(new punchwright.engine.geometry.Point(
                c[0], c[1]))).map(p -> new double[] {p.x(), p.y()}).toArray(double[][]::new)));
    }

    private static Polygon largest(Geometry g, Polygon otherwise) {
        return g instanceof Polygon p && !p.isEmpty() ? p : g.getNumGeometries() > 1 ? (Polygon) otherwise.convexHull()
                : otherwise;
    }

    /** Corners of the outer ring, counter-clockwise. */
    private static double[][] points(Polygon polygon) {
        Coordinate[] c = ((Polygon) polygon.norm()).getExteriorRing().getCoordinates();
        double[][] points = new double[c.length - 1][];
        for (int i = 0; i < points.length; i++) {
            Coordinate p = c[c.length - 1 - i];
            points[i] = new double[] {p.x, p.y};
        }
        return points;
    }

    private static Coordinate[] ring(double[][] points) {
        Coordinate[] c = new Coordinate[points.length + 1];
        for (int i = 0; i < points.length; i++) {
            c[i] = new Coordinate(points[i][0], points[i][1]);
        }
        c[points.length] = c[0].copy();
        return c;
    }
}
