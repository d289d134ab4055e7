// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.geometry;

import java.util.ArrayList;
import java.util.List;

/** Polygons from contours, for pictures and for checks that need no exact arcs. */
public final class Flattening {

    /** Least angle of a chord: 0.01 mm off at a radius of 80 m. */
    private static final double FINEST_RAD = 1e-3;

    private Flattening() {
    }

    /**
     * Points of a closed polygon whose distance from the contour is at most {@code chordErrorMm}; the first point is
     * not repeated at the end.
     */
    public static List<Point> points(Contour contour, double chordErrorMm) {
        List<Point> points = new ArrayList<>();
        for (Segment s : contour.segments()) {
            addWithoutEnd(s, chordErrorMm, points);
        }
        return points;
    }

    private static void addWithoutEnd(Segment s, double chordErrorMm, List<Point> points) {
        int pieces = s instanceof Arc arc ? pieces(arc, chordErrorMm) : 1;
        for (int i = 0; i < pieces; i++) {
            points.add(s.pointAt((double) i / pieces));
        }
    }

    /** Number of chords so that the sagitta stays below the error; at least one per quarter turn. */
    public static int pieces(Arc arc, double chordErrorMm) {
        double ratio = Math.max(-1, 1 - chordErrorMm / arc.radiusMm());
        double step = Math.min(Math.PI / 2, 2 * Math.acos(ratio));
        return Math.max(1, (int) Math.ceil(Math.abs(arc.sweepRad()) / Math.max(step, FINEST_RAD) - 1e-9));
    }

    /** Whether the point lies inside the polygon (even-odd rule). */
    public static boolean contains(List<Point> polygon, Point p) {
        boolean inside = false;
        for (int i = 0, j = polygon.size() - 1; i < polygon.size(); j = i++) {
            Point a = polygon.get(i);
            Point b = polygon.get(j);
            if (a.y() > p.y() != b.y() > p.y() && p.x() < (b.x() - a.x()) * (p.y() - a.y()) / (b.y() - a.y()) + a.x()) {
                inside = !inside;
            }
        }
        return inside;
    }
}
