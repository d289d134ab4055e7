// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.geometry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** A point well inside a contour, to ask where the contour lies. */
public final class InteriorPoint {

    private static final double MIDDLE = 0.5;
    /** A level line with a piece this wide, as a share of the whole width, is good enough. */
    private static final double WIDE = 0.02;
    private static final double[] HEIGHTS = {MIDDLE, 0.3141, 0.6931, 0.1483, 0.8713};

    private InteriorPoint() {
    }

    /** The middle of the widest piece of a level line inside the contour; the centre for a circle. */
    public static Point of(Contour contour) {
        if (contour.segments().size() == 1 && contour.segments().get(0) instanceof Arc arc) {
            return arc.center();
        }
        List<Point> polygon = Flattening.points(contour, 0.01);
        Bounds box = contour.bounds();
        Point best = box.center();
        double widest = 0;
        for (double share : HEIGHTS) {
            double y = share == MIDDLE ? betweenCorners(polygon, box) : box.minY() + share * box.height();
            List<Double> xs = crossings(polygon, y);
            for (int i = 0; i + 1 < xs.size(); i += 2) {
                double width = xs.get(i + 1) - xs.get(i);
                if (width > widest) {
                    widest = width;
                    best = new Point((xs.get(i) + xs.get(i + 1)) / 2, y);
                }
            }
            if (widest > WIDE * box.width()) {
                return best;
            }
        }
        return best;
    }

    /** Half way between the corners next below and next above the middle: the way usual in geometry libraries. */
    private static double betweenCorners(List<Point> polygon, Bounds box) {
        double middle = (box.minY() + box.maxY()) / 2;
        double below = box.minY();
        double above = box.maxY();
        for (Point p : polygon) {
            if (p.y() <= middle) {
                below = Math.max(below, p.y());
            } else {
                above = Math.min(above, p.y());
            }
        }
        return (below + above) / 2;
    }

    private static List<Double> crossings(List<Point> polygon, double y) {
        List<Double> xs = new ArrayList<>();
        for (int i = 0, j = polygon.size() - 1; i < polygon.size(); j = i++) {
            Point a = polygon.get(i);
            Point b = polygon.get(j);
            if (a.y() > y != b.y() > y) {
                xs.add((b.x() - a.x()) * (y - a.y()) / (b.y() - a.y()) + a.x());
            }
        }
        Collections.sort(xs);
        return xs;
    }
}
