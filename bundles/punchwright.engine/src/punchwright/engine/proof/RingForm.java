// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.proof;

import java.util.List;

import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferParameters;

import punchwright.engine.geometry.Point;

/**
 * The form of one closed edge (a part's outline or one of its openings) about an anchor, made once for all edges of the same
 * form: a track on the waste side that must be cut away everywhere, and one on the part's side that must not be touched. Both
 * lie at the tolerance plus the error of the polygon from the drawn edge.
 */
final class RingForm {

    private static final double LONGEST_PIECE_MM = 25;
    private static final double CHORD_MM = 0.01;

    private final boolean opening;
    private final Polygon polygon;
    private final Geometry toWaste;
    private final Track waste;
    private final Track part;
    private final IndexedPointInAreaLocator locator;

    RingForm(List<Point> points, boolean opening, double toleranceMm) {
        this.opening = opening;
        Coordinate[] c = new Coordinate[points.size() + 1];
        for (int i = 0; i < points.size(); i++) {
            c[i] = new Coordinate(points.get(i).x(), points.get(i).y());
        }
        c[points.size()] = c[0].copy();
        polygon = Punch.FACTORY.createPolygon(c);
        double offset = toleranceMm + chordMm(toleranceMm);
        toWaste = buffer(opening ? -offset : offset);
        waste = Track.around(toWaste, LONGEST_PIECE_MM);
        part = Track.around(buffer(opening ? offset : -offset), LONGEST_PIECE_MM);
        locator = new IndexedPointInAreaLocator(polygon);
    }

    /** Largest distance of the polygon's sides from the drawn arcs. */
    static double chordMm(double toleranceMm) {
        return Math.min(CHORD_MM, toleranceMm / 10);
    }

    private Geometry buffer(double mm) {
        BufferParameters p = new BufferParameters(8);
        p.setSimplifyFactor(0.001);
        return org.locationtech.jts.operation.buffer.BufferOp.bufferOp(polygon, mm, p);
    }

    boolean opening() {
        return opening;
    }

    Polygon polygon() {
        return polygon;
    }

    /** The part's outline grown by the tolerance, or the opening shrunk by it. */
    Geometry toWaste() {
        return toWaste;
    }

    Track waste() {
        return waste;
    }

    Track part() {
        return part;
    }

    boolean contains(double x, double y) {
        return polygon.getEnvelopeInternal().contains(x, y) && locator.locate(new Coordinate(x, y)) == Location.INTERIOR;
    }
}
