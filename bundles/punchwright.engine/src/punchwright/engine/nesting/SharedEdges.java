// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import java.util.ArrayList;
import java.util.List;

import punchwright.engine.geometry.Bounds;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Line;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Segment;

/** Straight edges of neighbours that run side by side exactly a web apart: one slitting cut makes both. */
public final class SharedEdges {

    /** Edges that are this much off the web or off parallel over their length still count, mm. */
    private static final double TOLERANCE_MM = 0.01;

    private record Edges(Bounds box, List<Line> lines) {
    }

    private SharedEdges() {
    }

    /** Length in mm along which cuts serve two parts. {@code outlines} lie on the sheet, each counter-clockwise. */
    public static double lengthMm(List<Contour> outlines, double webMm) {
        List<Edges> all = new ArrayList<>();
        for (Contour c : outlines) {
            List<Line> lines = new ArrayList<>();
            for (Segment s : c.segments()) {
                if (s instanceof Line line && line.lengthMm() > TOLERANCE_MM) {
                    lines.add(line);
                }
            }
            all.add(new Edges(c.bounds(), lines));
        }
        double sum = 0;
        for (int i = 0; i < all.size(); i++) {
            for (int j = 0; j < i; j++) {
                if (near(all.get(i).box, all.get(j).box, webMm + TOLERANCE_MM)) {
                    sum += shared(all.get(i).lines, all.get(j).lines, webMm);
                }
            }
        }
        return sum;
    }

    private static boolean near(Bounds a, Bounds b, double by) {
        return a.minX() < b.maxX() + by && b.minX() < a.maxX() + by && a.minY() < b.maxY() + by && b.minY() < a.maxY() + by;
    }

    private static double shared(List<Line> a, List<Line> b, double webMm) {
        double sum = 0;
        for (Line p : a) {
            for (Line q : b) {
                sum += shared(p, q, webMm);
            }
        }
        return sum;
    }

    /** Overlap of two edges that run against each other with the web between them, on the outer side of both. */
    private static double shared(Line a, Line b, double webMm) {
        Point along = a.end().minus(a.start()).times(1 / a.lengthMm());
        Point from = b.end().minus(a.start());
        Point to = b.start().minus(a.start());
        double x1 = along.dot(from);
        double x2 = along.dot(to);
        boolean apart = Math.abs(-along.cross(from) - webMm) <= TOLERANCE_MM && Math.abs(-along.cross(to) - webMm) <= TOLERANCE_MM;
        return apart && x2 > x1 ? Math.max(0, Math.min(a.lengthMm(), x2) - Math.max(0, x1)) : 0;
    }
}
