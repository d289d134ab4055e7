// SPDX-License-Identifier: EPL-2.0
package punchwright.synthetic;

import java.util.ArrayList;
import java.util.List;

import punchwright.engine.geometry.Point;

/** Edges of openings about their centre, counter-clockwise, from their sizes by plane geometry. */
final class OpeningForms {

    private static final double QUARTER = Math.PI / 2;

    private OpeningForms() {
    }

    static List<Curve> round(double d) {
        Point o = Point.ORIGIN;
        return List.of(Curve.arc(o, d / 2, 0, Math.PI), Curve.arc(o, d / 2, Math.PI, 2 * Math.PI));
    }

    static List<Curve> polygon(double... xy) {
        List<Curve> sides = new ArrayList<>();
        int n = xy.length / 2;
        for (int i = 0; i < n; i++) {
            int k = (i + 1) % n;
            sides.add(Curve.line(new Point(xy[2 * i], xy[2 * i + 1]), new Point(xy[2 * k], xy[2 * k + 1])));
        }
        return sides;
    }

    static List<Curve> rectangle(double l, double w) {
        return polygon(-l / 2, -w / 2, l / 2, -w / 2, l / 2, w / 2, -l / 2, w / 2);
    }

    static List<Curve> roundedRectangle(double l, double w, double r) {
        double x = l / 2 - r;
        double y = w / 2 - r;
        return joined(List.of(Curve.arc(new Point(x, -y), r, -QUARTER, 0), Curve.arc(new Point(x, y), r, 0, QUARTER),
                Curve.arc(new Point(-x, y), r, QUARTER, 2 * QUARTER), Curve.arc(new Point(-x, -y), r, 2 * QUARTER, 3 * QUARTER)));
    }

    static List<Curve> obround(double l, double w) {
        double x = (l - w) / 2;
        return joined(List.of(Curve.arc(new Point(x, 0), w / 2, -QUARTER, QUARTER), Curve.arc(new Point(-x, 0), w / 2, QUARTER,
                3 * QUARTER)));
    }

    /** The flat lies above. */
    static List<Curve> singleFlat(double d, double height) {
        double a = Math.asin((height - d / 2) / (d / 2));
        return joined(List.of(Curve.arc(Point.ORIGIN, d / 2, Math.PI - a, 2 * Math.PI + a)));
    }

    static List<Curve> doubleFlat(double d, double across) {
        double a = Math.asin(across / d);
        return joined(List.of(Curve.arc(Point.ORIGIN, d / 2, -a, a), Curve.arc(Point.ORIGIN, d / 2, Math.PI - a, Math.PI + a)));
    }

    /** n equal sides at the distance {@code in} from the centre; the first corner lies at {@code firstDeg}. */
    static List<Curve> regular(int n, double in, double firstDeg) {
        double[] xy = new double[2 * n];
        double out = in / Math.cos(Math.PI / n);
        for (int i = 0; i < n; i++) {
            xy[2 * i] = out * Math.cos(Math.toRadians(firstDeg + 360.0 * i / n));
            xy[2 * i + 1] = out * Math.sin(Math.toRadians(firstDeg + 360.0 * i / n));
        }
        return polygon(xy);
    }

    /** A round of radius {@code r} with a slot to the right. */
    static List<Curve> keyhole(double overall, double slot, double r) {
        double open = Math.asin(slot / 2 / r);
        return joined(List.of(Curve.arc(Point.ORIGIN, r, open, 2 * Math.PI - open),
                Curve.arc(new Point(overall - r - slot / 2, 0), slot / 2, -QUARTER, QUARTER)));
    }

    /** Its middle lies in the origin and runs to the right; it bends to the left. */
    static List<Curve> arcSlot(double overall, double width, double radius) {
        double half = (overall - width) / radius / 2;
        Point c = new Point(0, radius);
        double from = -QUARTER - half;
        double to = -QUARTER + half;
        return List.of(Curve.arc(c, radius + width / 2, from, to),
                Curve.arc(Curve.at(c, radius, to), width / 2, to, to + Math.PI),
                Curve.arc(c, radius - width / 2, to, from), Curve.arc(Curve.at(c, radius, from), width / 2, from + Math.PI,
                from + 2 * Math.PI));
    }

    /** Straight pieces between arcs that do not meet. */
    static List<Curve> joined(List<Curve> arcs) {
        List<Curve> all = new ArrayList<>();
        for (int i = 0; i < arcs.size(); i++) {
            Curve next = arcs.get((i + 1) % arcs.size());
            all.add(arcs.get(i));
            if (arcs.get(i).b().distance(next.a()) > 1e-9) {
                all.add(Curve.line(arcs.get(i).b(), next.a()));
            }
        }
        return all;
    }
}
