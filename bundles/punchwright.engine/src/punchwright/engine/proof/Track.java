// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.proof;

import java.util.Arrays;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.util.LinearComponentExtracter;

/** A polyline (or several) beside an edge, whose pieces are found by place. Coordinates about the ring's anchor. */
final class Track {

    private final double[] x0;
    private final double[] y0;
    private final double[] x1;
    private final double[] y1;
    private final int[] order;
    private final double[] minX;
    private final double longest;
    private final Envelope box = new Envelope();

    private Track(double[][] pieces) {
        x0 = pieces[0];
        y0 = pieces[1];
        x1 = pieces[2];
        y1 = pieces[3];
        double width = 0;
        for (int i = 0; i < x0.length; i++) {
            width = Math.max(width, Math.abs(x1[i] - x0[i]));
            box.expandToInclude(x0[i], y0[i]);
        }
        longest = width;
        order = java.util.stream.IntStream.range(0, x0.length).boxed()
                .sorted((a, b) -> Double.compare(left(a), left(b))).mapToInt(Integer::intValue).toArray();
        minX = Arrays.stream(order).mapToDouble(this::left).toArray();
    }

    /** The outline of an area, long straight pieces split so that all are found quickly. */
    static Track around(Geometry area, double longestMm) {
        int n = 0;
        double[][] p = new double[4][64];
        for (Object o : LinearComponentExtracter.getLines(area)) {
            Coordinate[] c = ((LineString) o).getCoordinates();
            for (int i = 1; i < c.length; i++) {
                int parts = Math.max(1, (int) Math.ceil(c[i].distance(c[i - 1]) / longestMm));
                for (int k = 0; k < parts; k++) {
                    if (n == p[0].length) {
                        for (int q = 0; q < 4; q++) {
                            p[q] = Arrays.copyOf(p[q], 2 * n);
                        }
                    }
                    set(p, n++, c[i - 1], c[i], (double) k / parts, (double) (k + 1) / parts);
                }
            }
        }
        double[][] exact = new double[4][];
        for (int q = 0; q < 4; q++) {
            exact[q] = Arrays.copyOf(p[q], n);
        }
        return new Track(exact);
    }

    private static void set(double[][] p, int n, Coordinate a, Coordinate b, double from, double to) {
        p[0][n] = a.x + from * (b.x - a.x);
        p[1][n] = a.y + from * (b.y - a.y);
        p[2][n] = a.x + to * (b.x - a.x);
        p[3][n] = a.y + to * (b.y - a.y);
    }

    int size() {
        return x0.length;
    }

    Envelope box() {
        return box;
    }

    double lengthMm(int piece) {
        return Math.hypot(x1[piece] - x0[piece], y1[piece] - y0[piece]);
    }

    Coordinate at(int piece, double share) {
        return new Coordinate(x0[piece] + share * (x1[piece] - x0[piece]), y0[piece] + share * (y1[piece] - y0[piece]));
    }

    /** What is done with each piece that may meet a box. */
    interface Visitor {
        void visit(int piece);
    }

    void visit(Envelope b, Visitor visitor) {
        int i = Arrays.binarySearch(minX, b.getMinX() - longest - 1e-9);
        for (i = i < 0 ? -i - 1 : first(i); i < order.length && minX[i] <= b.getMaxX(); i++) {
            int p = order[i];
            if (Math.max(x0[p], x1[p]) >= b.getMinX() && Math.min(y0[p], y1[p]) <= b.getMaxY()
                    && Math.max(y0[p], y1[p]) >= b.getMinY()) {
                visitor.visit(p);
            }
        }
    }

    private int first(int i) {
        int k = i;
        while (k > 0 && minX[k - 1] == minX[i]) {
            k--;
        }
        return k;
    }

    /** Stretches of a piece that a region about (cx, cy) covers. */
    void clip(int p, Region region, double cx, double cy, Spans spans) {
        region.clip(x0[p] - cx, y0[p] - cy, x1[p] - cx, y1[p] - cy, spans);
    }

    private double left(int piece) {
        return Math.min(x0[piece], x1[piece]);
    }
}
