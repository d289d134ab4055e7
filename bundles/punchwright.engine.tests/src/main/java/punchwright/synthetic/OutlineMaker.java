// SPDX-License-Identifier: EPL-2.0
package punchwright.synthetic;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

import punchwright.engine.feature.OutlineDetail;
import punchwright.engine.geometry.Point;

/**
 * The outline of a rectangular plate with its lower left corner in the origin: one corner each sharp or of any kind, round,
 * chamfered and notched, and notches with square or round ends in its sides. Details keep 10 mm straight edge between them.
 */
final class OutlineMaker {

    /** No detail reaches farther into the plate. */
    static final double DEPTH_MM = 20;
    private static final double CORNER_MM = 25;

    private final Random random;
    private final List<Curve> edges = new ArrayList<>();
    private final List<TrueDetail> details = new ArrayList<>();
    private Point at;
    private Point first;

    OutlineMaker(Random random, double lengthMm, double widthMm) {
        this.random = random;
        List<Integer> corners = new ArrayList<>(List.of(1, 2, 3, random.nextInt(4)));
        Collections.shuffle(corners, random);
        double[][] xy = {{0, 0}, {lengthMm, 0}, {lengthMm, widthMm}, {0, widthMm}};
        double[][] way = {{1, 0}, {0, 1}, {-1, 0}, {0, -1}};
        for (int i = 0; i < 4; i++) {
            corner(corners.get(i), xy[i], way[(i + 3) % 4], way[i]);
            side(xy[i], way[i], i % 2 == 0 ? lengthMm : widthMm);
        }
        if (at.distance(first) > 1e-9) {
            edges.add(Curve.line(at, first));
        }
    }

    List<Curve> edges() {
        return edges;
    }

    List<TrueDetail> details() {
        return details;
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    /** base + a u + b v. */
    private static Point point(double[] base, double a, double[] u, double b, double[] v) {
        return new Point(base[0] + a * u[0] + b * v[0], base[1] + a * u[1] + b * v[1]);
    }

    private void to(Point p) {
        if (at != null) {
            edges.add(Curve.line(at, p));
        } else {
            first = p;
        }
        at = p;
    }

    private void round(Point center, double radius, Point end, double sweepRad) {
        double from = Math.atan2(at.y() - center.y(), at.x() - center.x());
        edges.add(new Curve(at, Curve.at(center, radius, from + sweepRad / 2), end));
        at = end;
    }

    /** @param in  direction of the side before the corner, {@code out} of the one after */
    private void corner(int kind, double[] c, double[] in, double[] out) {
        Point missing = new Point(c[0], c[1]);
        if (kind == 0) {
            to(missing);
        } else if (kind == 1) {
            double r = between(1.5, 18);
            to(point(c, -r, in, 0, out));
            round(point(c, -r, in, r, out), r, point(c, 0, in, r, out), Math.PI / 2);
            details.add(new TrueDetail(OutlineDetail.Kind.CORNER_RADIUS, missing, 0, 0, r));
        } else {
            double p = between(2, 18);
            double q = kind == 3 ? between(2, 18) : Math.min(18, p * between(0.5, 2));
            to(point(c, -p, in, 0, out));
            if (kind == 3) {
                to(point(c, -p, in, q, out));
            }
            to(point(c, 0, in, q, out));
            details.add(new TrueDetail(kind == 2 ? OutlineDetail.Kind.CHAMFER : OutlineDetail.Kind.CORNER_NOTCH,
                    missing, p, q, 0));
        }
    }

    private void side(double[] from, double[] way, double length) {
        double[] in = {-way[1], way[0]};
        double s = CORNER_MM + between(5, 60);
        for (int left = random.nextInt(3); left > 0 && s < length - CORNER_MM - 40; left--) {
            double w = between(2, 18);
            boolean round = random.nextInt(3) == 0;
            double deep = round ? w / 2 + between(1, DEPTH_MM - w / 2) : between(1, DEPTH_MM);
            double straight = round ? deep - w / 2 : deep;
            to(point(from, s, way, 0, in));
            to(point(from, s, way, straight, in));
            if (round) {
                round(point(from, s + w / 2, way, straight, in), w / 2, point(from, s + w, way, straight, in), -Math.PI);
            } else {
                to(point(from, s + w, way, straight, in));
            }
            to(point(from, s + w, way, 0, in));
            details.add(new TrueDetail(OutlineDetail.Kind.EDGE_NOTCH, point(from, s + w / 2, way, 0, in), w, deep, round
                    ? w / 2 : 0));
            s += w + 10 + between(0, 60);
        }
    }
}
