// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.geometry;

import java.util.ArrayList;
import java.util.List;

/** Common points of two segments. Overlapping pieces of one line or circle have no single points and give none. */
public final class Intersections {

    private static final double PARALLEL = 1e-12;

    private Intersections() {
    }

    /** Points that lie on both segments, within {@code toleranceMm} of their ends; at most two. */
    public static List<Point> of(Segment a, Segment b, double toleranceMm) {
        List<Point> candidates = switch (a) {
            case Line la -> b instanceof Line lb ? lines(la, lb) : lineArc(la, (Arc) b);
            case Arc aa -> b instanceof Line lb ? lineArc(lb, aa) : arcs(aa, (Arc) b, toleranceMm);
        };
        List<Point> on = new ArrayList<>(2);
        for (Point p : candidates) {
            if (a.distance(p) <= toleranceMm && b.distance(p) <= toleranceMm) {
                on.add(p);
            }
        }
        return on;
    }

    private static List<Point> lines(Line a, Line b) {
        Point u = a.end().minus(a.start());
        Point v = b.end().minus(b.start());
        double cross = u.cross(v);
        if (Math.abs(cross) <= PARALLEL * u.norm() * v.norm()) {
            return List.of();
        }
        return List.of(a.start().plus(u.times(b.start().minus(a.start()).cross(v) / cross)));
    }

    private static List<Point> lineArc(Line line, Arc arc) {
        Point d = line.end().minus(line.start()).unit();
        Point foot = line.start().plus(d.times(arc.center().minus(line.start()).dot(d)));
        double h2 = arc.radiusMm() * arc.radiusMm() - foot.minus(arc.center()).dot(foot.minus(arc.center()));
        if (h2 < 0) {
            return Math.sqrt(-h2) < 1e-3 * arc.radiusMm() ? List.of(foot) : List.of();
        }
        Point half = d.times(Math.sqrt(h2));
        return List.of(foot.minus(half), foot.plus(half));
    }

    private static List<Point> arcs(Arc a, Arc b, double toleranceMm) {
        Point d = b.center().minus(a.center());
        double distance = d.norm();
        if (distance <= toleranceMm && Math.abs(a.radiusMm() - b.radiusMm()) <= toleranceMm || distance == 0) {
            return List.of();
        }
        double along = (distance * distance + a.radiusMm() * a.radiusMm() - b.radiusMm() * b.radiusMm()) / (2 * distance);
        double h2 = a.radiusMm() * a.radiusMm() - along * along;
        Point foot = a.center().plus(d.times(along / distance));
        if (h2 < 0) {
            return List.of(foot);
        }
        Point half = d.left().times(Math.sqrt(h2) / distance);
        return List.of(foot.minus(half), foot.plus(half));
    }
}
