// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.proof;

import java.util.ArrayList;
import java.util.List;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

import punchwright.engine.geometry.Flattening;
import punchwright.engine.geometry.Point;
import punchwright.engine.tooling.Tool;

/**
 * What one stroke of a tool at an angle takes away (or, for a forming tool, works on), about the tool axis. Built from the
 * tool's record alone: regions for exact sections, and a polygon with corners on the true outline for areas.
 *
 * <p>Length lies along x at angle 0. Single flat: flat on the +y side. Hexagon: two flats across x. Triangle: a side along
 * x at the bottom, axis in the centroid. Corner radius: square less four circles about its corners.
 */
final class Punch {

    static final GeometryFactory FACTORY = new GeometryFactory();
    private static final double CHORD_MM = 0.02;

    private final Tool tool;
    private final List<Region> regions;
    private final Geometry area;
    private final Envelope box;
    private final List<Coordinate> inner = new ArrayList<>();

    private Punch(Tool tool, List<Region> regions, Geometry area) {
        this.tool = tool;
        this.regions = List.copyOf(regions);
        this.area = area;
        this.box = area.getEnvelopeInternal();
        for (int i = 0; i < area.getNumGeometries(); i++) {
            inner.add(innerPoint(area.getGeometryN(i)));
        }
    }

    static Punch of(Tool tool, double angleDeg) {
        double a = Math.toRadians(angleDeg);
        boolean quarter = Math.abs(angleDeg / 90 - Math.rint(angleDeg / 90)) < 1e-12;
        double cos = quarter ? Math.rint(Math.cos(a)) : Math.cos(a);
        double sin = quarter ? Math.rint(Math.sin(a)) : Math.sin(a);
        List<Region> turned = regions(tool).stream().map(r -> r.turned(cos, sin)).toList();
        return new Punch(tool, turned, outline(tool, cos, sin));
    }

    Tool tool() {
        return tool;
    }

    boolean forms() {
        return tool.shape().forms();
    }

    List<Region> regions() {
        return regions;
    }

    /** About the tool axis. */
    Geometry area() {
        return area;
    }

    /** About the tool axis. */
    Envelope box() {
        return box;
    }

    /** A point inside each piece, about the tool axis. */
    List<Coordinate> inner() {
        return inner;
    }

    private static Coordinate innerPoint(Geometry piece) {
        org.locationtech.jts.geom.Point c = piece.getCentroid();
        return piece.contains(c) ? c.getCoordinate() : piece.getInteriorPoint().getCoordinate();
    }

    private static List<Region> regions(Tool t) {
        double l = t.lengthMm();
        double w = t.widthMm();
        return switch (t.shape()) {
            case ROUND -> List.of(Cell.disc(0, 0, l / 2));
            case SQUARE, RECTANGLE, SLITTING -> rounded(0, 0, l, w, t.cornerRadiusMm());
            case OBROUND -> rounded(0, 0, l, w, w / 2);
            case SINGLE_FLAT -> List.of(Cell.halfPlane(0, 1, w - l / 2).withInside(0, 0, l / 2));
            case DOUBLE_FLAT -> List.of(Cell.box(0, 0, 2 * l, w).withInside(0, 0, l / 2));
            case HEXAGON -> List.of(Cell.regular(6, l / 2, 0));
            case TRIANGLE -> List.of(Cell.regular(3, l / Math.sqrt(12), -Math.PI / 2));
            case CORNER_RADIUS -> List.of(hollow(l, t.cornerRadiusMm()));
            case CLUSTER -> cluster(t);
            case FREE_CONTOUR -> List.of(free(t));
            default -> Math.abs(l - w) < 1e-9 ? List.of(Cell.disc(0, 0, l / 2)) : List.of(Cell.box(0, 0, l, w));
        };
    }

    private static List<Region> rounded(double x, double y, double l, double w, double r) {
        if (r < 1e-9) {
            return List.of(Cell.box(x, y, l, w));
        }
        List<Region> cells = new ArrayList<>();
        cells.add(Cell.box(x, y, l - 2 * r, w));
        cells.add(Cell.box(x, y, l, w - 2 * r));
        for (int sx = -1; sx <= 1; sx += 2) {
            for (int sy = -1; sy <= 1; sy += 2) {
                cells.add(Cell.disc(x + sx * (l / 2 - r), y + sy * (w / 2 - r), r));
            }
        }
        return cells;
    }

    private static Cell hollow(double side, double r) {
        double h = side / 2;
        return Cell.box(0, 0, side, side).withOutside(h, h, r).withOutside(-h, h, r).withOutside(-h, -h, r).withOutside(h, -h, r);
    }

    private static List<Region> cluster(Tool t) {
        List<Region> cells = new ArrayList<>();
        boolean round = Math.abs(t.lengthMm() - t.widthMm()) < 1e-9;
        for (Point p : t.cluster()) {
            if (round) {
                cells.add(Cell.disc(p.x(), p.y(), t.lengthMm() / 2));
            } else {
                cells.addAll(rounded(p.x(), p.y(), t.lengthMm(), t.widthMm(), t.cornerRadiusMm()));
            }
        }
        return cells;
    }

    private static PolygonRegion free(Tool t) {
        List<Point> points = Flattening.points(t.freeContour(), CHORD_MM / 20);
        return new PolygonRegion(points.stream().mapToDouble(Point::x).toArray(),
                points.stream().mapToDouble(Point::y).toArray());
    }

    private static Geometry outline(Tool t, double cos, double sin) {
        List<Geometry> pieces = new ArrayList<>();
        for (List<Coordinate> ring : Outline.of(t, CHORD_MM)) {
            pieces.add(polygon(ring, cos, sin));
        }
        return pieces.size() == 1 ? pieces.getFirst() : OverlayNGRobust.union(pieces);
    }

    private static Polygon polygon(List<Coordinate> ring, double cos, double sin) {
        Coordinate[] turned = new Coordinate[ring.size() + 1];
        for (int i = 0; i < ring.size(); i++) {
            Coordinate c = ring.get(i);
            turned[i] = new Coordinate(cos * c.x - sin * c.y, sin * c.x + cos * c.y);
        }
        turned[ring.size()] = turned[0].copy();
        return FACTORY.createPolygon(turned);
    }
}
