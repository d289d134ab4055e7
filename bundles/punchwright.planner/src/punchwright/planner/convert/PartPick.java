// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.convert;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

import punchwright.engine.geometry.Bounds;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Flattening;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Shape;

/**
 * Tells parts of one drawing apart by a place in their material, which stays true when layers or the order of lines change. The
 * place lies in the middle of the widest piece of material on one of several level lines.
 */
public final class PartPick {

    private static final double CHORD_ERROR_MM = 0.01;
    /** Shares of the height, off the middle lines on which holes lie. */
    private static final double[] HEIGHTS = {0.5017, 0.0713, 0.9291, 0.3141, 0.6931, 0.0217, 0.9783, 0.1483, 0.8713};

    private PartPick() {
    }

    /** A place in the material of a part, in mm. */
    public static Point inside(Shape shape) {
        Bounds box = shape.bounds();
        Point best = box.center();
        double widest = 0;
        for (double share : HEIGHTS) {
            double y = box.minY() + share * box.height();
            List<Double> xs = crossings(shape, y);
            for (int i = 0; i + 1 < xs.size(); i += 2) {
                double width = xs.get(i + 1) - xs.get(i);
                if (width > widest * 1.0001) {
                    widest = width;
                    best = new Point((xs.get(i) + xs.get(i + 1)) / 2, y);
                }
            }
        }
        return best;
    }

    /** The part whose material holds a place, if any. */
    public static Optional<Shape> at(List<Shape> shapes, Point place) {
        return shapes.stream().filter(s -> holds(s, place)).findFirst();
    }

    private static boolean holds(Shape shape, Point place) {
        Bounds box = shape.bounds();
        if (place.x() < box.minX() || place.x() > box.maxX() || place.y() < box.minY() || place.y() > box.maxY()) {
            return false;
        }
        return crossings(shape, place.y()).stream().filter(x -> x < place.x()).count() % 2 == 1;
    }

    private static List<Double> crossings(Shape shape, double y) {
        List<Double> xs = new ArrayList<>();
        cross(shape.outer(), y, xs);
        shape.holes().forEach(hole -> cross(hole, y, xs));
        Collections.sort(xs);
        return xs;
    }

    private static void cross(Contour contour, double y, List<Double> xs) {
        Bounds box = contour.bounds();
        if (y < box.minY() || y > box.maxY()) {
            return;
        }
        List<Point> polygon = Flattening.points(contour, CHORD_ERROR_MM);
        for (int i = 0, j = polygon.size() - 1; i < polygon.size(); j = i++) {
            Point a = polygon.get(i);
            Point b = polygon.get(j);
            if (a.y() > y != b.y() > y) {
                xs.add((b.x() - a.x()) * (y - a.y()) / (b.y() - a.y()) + a.x());
            }
        }
    }
}
