// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.proof;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

import punchwright.engine.geometry.Point;

/** The intended micro-joints, found by place; remembers which of them were met by an uncut stretch. */
final class Joints {

    private static final double CELL_MM = 10;

    private final double jointMm;
    private final double slackMm;
    private final List<Point> points;
    private final boolean[] met;
    private final Map<Long, List<Integer>> cells = new HashMap<>();

    /** @param slackMm  how much wider than intended an uncut stretch may be on either side */
    Joints(List<Point> points, double jointMm, double slackMm) {
        this.points = points;
        this.jointMm = jointMm;
        this.slackMm = slackMm;
        this.met = new boolean[points.size()];
        for (int i = 0; i < met.length; i++) {
            cells.computeIfAbsent(cell(points.get(i), 0, 0), k -> new ArrayList<>()).add(i);
        }
    }

    /** Whether an uncut stretch, on a track at a distance from the edge, is that of a joint. */
    boolean take(Point from, Point middle, Point to, double trackMm) {
        double reach = Math.hypot(jointMm / 2 + slackMm, trackMm) + 1e-6;
        for (int dx = -1; dx <= 1; dx++) {
            for (int dy = -1; dy <= 1; dy++) {
                for (int i : cells.getOrDefault(cell(middle, dx, dy), List.of())) {
                    Point p = points.get(i);
                    if (p.distance(from) <= reach && p.distance(middle) <= reach && p.distance(to) <= reach) {
                        met[i] = true;
                        return true;
                    }
                }
            }
        }
        return false;
    }

    /** Joints of which nothing is left. */
    List<Point> missing() {
        List<Point> missing = new ArrayList<>();
        for (int i = 0; i < met.length; i++) {
            if (!met[i]) {
                missing.add(points.get(i));
            }
        }
        return missing;
    }

    /** Whether any joint lies on an edge. */
    boolean anyOn(Ring ring) {
        Geometry edge = ring.form().polygon().getBoundary();
        Envelope box = ring.box(1);
        return points.stream().filter(p -> box.contains(p.x(), p.y()))
                .map(p -> new Coordinate(p.x() - ring.anchorX(), p.y() - ring.anchorY()))
                .anyMatch(c -> edge.distance(Punch.FACTORY.createPoint(c)) < 0.1);
    }

    private static long cell(Point p, int dx, int dy) {
        return ((long) Math.floor(p.x() / CELL_MM) + dx) * 1_000_003L + (long) Math.floor(p.y() / CELL_MM) + dy;
    }
}
