// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting.check;

import java.util.ArrayList;
import java.util.List;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.util.AffineTransformation;

import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Flattening;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Pose;
import punchwright.engine.geometry.Shape;
import punchwright.engine.nesting.NestPart;

/** A part where it lies on a sheet: its true shape as a polygon, openings left out. */
record Placed(NestPart part, Pose pose, Geometry polygon) {

    static final GeometryFactory FACTORY = new GeometryFactory();

    private static final double CHORD_MM = 5e-4;

    static Geometry polygon(Shape shape) {
        return FACTORY.createPolygon(ring(shape.outer()), shape.holes().stream().map(Placed::ring).toArray(LinearRing[]::new));
    }

    static Placed of(NestPart part, Geometry own, Pose pose) {
        AffineTransformation t = new AffineTransformation();
        if (pose.mirrored()) {
            t.scale(-1, 1);
        }
        t.rotate(Math.toRadians(pose.angleDeg()));
        t.translate(pose.x(), pose.y());
        return new Placed(part, pose, t.transform(own));
    }

    private static LinearRing ring(Contour contour) {
        List<Coordinate> points = new ArrayList<>();
        for (Point p : Flattening.points(contour, CHORD_MM)) {
            points.add(new Coordinate(p.x(), p.y()));
        }
        points.add(points.get(0).copy());
        return FACTORY.createLinearRing(points.toArray(Coordinate[]::new));
    }

    Envelope box() {
        return polygon.getEnvelopeInternal();
    }

    Point middle() {
        return new Point(box().centre().x, box().centre().y);
    }

    String id() {
        return part.id();
    }
}
