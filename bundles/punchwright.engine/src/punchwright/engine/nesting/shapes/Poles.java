// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting.shapes;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;

/**
 * Circles that fill a polygon from inside: first the largest inscribed circle, then again and again the largest that overlaps
 * no earlier one, until they cover most of the area. Each is found by splitting squares with an upper bound on what a centre
 * inside can reach (as for the pole of inaccessibility of a map area).
 */
final class Poles {

    private static final double COVER = 0.9;
    private static final int MOST = 8;
    private static final double LEAST_SHARE = 0.08;

    /** A circle. */
    record Circle(double x, double y, double r) {
    }

    private record Cell(double x, double y, double half, double value) {

        double reach() {
            return value + half * Math.sqrt(2);
        }
    }

    private final Rings rings;
    private final List<Circle> found = new ArrayList<>();

    private Poles(Rings rings) {
        this.rings = rings;
    }

    static List<Circle> of(Rings rings) {
        Poles p = new Poles(rings);
        double area = rings.area();
        double covered = 0;
        while (p.found.size() < MOST && covered < COVER * area) {
            Circle c = p.largest();
            if (c.r <= 0 || !p.found.isEmpty() && c.r < LEAST_SHARE * p.found.get(0).r) {
                break;
            }
            p.found.add(c);
            covered += Math.PI * c.r * c.r;
        }
        return List.copyOf(p.found);
    }

    private Circle largest() {
        double w = rings.maxX() - rings.minX();
        double h = rings.maxY() - rings.minY();
        double size = Math.min(w, h);
        double precision = 0.005 * Math.max(w, h);
        PriorityQueue<Cell> open = new PriorityQueue<>(Comparator.comparingDouble((Cell c) -> -c.reach())
                .thenComparingDouble(Cell::x).thenComparingDouble(Cell::y));
        Cell best = cell((rings.minX() + rings.maxX()) / 2, (rings.minY() + rings.maxY()) / 2, 0);
        double half = size / 2;
        for (double x = rings.minX(); x < rings.maxX(); x += size) {
            for (double y = rings.minY(); y < rings.maxY(); y += size) {
                open.add(cell(x + half, y + half, half));
            }
        }
        for (int n = 0; !open.isEmpty() && open.peek().reach() > best.value + precision && n < 4000; n++) {
            Cell c = open.poll();
            best = c.value > best.value ? c : best;
            double q = c.half / 2;
            open.add(cell(c.x - q, c.y - q, q));
            open.add(cell(c.x + q, c.y - q, q));
            open.add(cell(c.x - q, c.y + q, q));
            open.add(cell(c.x + q, c.y + q, q));
        }
        return new Circle(best.x, best.y, best.value);
    }

    private Cell cell(double x, double y, double half) {
        double d = rings.signedDistance(x, y);
        for (Circle c : found) {
            d = Math.min(d, Math.hypot(x - c.x, y - c.y) - c.r);
        }
        return new Cell(x, y, half, d);
    }
}
