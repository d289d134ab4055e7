// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.proof;

import java.util.ArrayList;
import java.util.List;

import org.locationtech.jts.geom.Coordinate;

import punchwright.engine.geometry.Flattening;
import punchwright.engine.geometry.Point;
import punchwright.engine.tooling.Tool;
import punchwright.engine.tooling.ToolShape;

/** Corners of a punch's outline at angle 0, on the true outline, counter-clockwise; one ring for each single punch. */
final class Outline {

    private final double chordMm;
    private final List<Coordinate> ring = new ArrayList<>();
    private double arcsMm;
    private double chordsMm;

    private Outline(double chordMm) {
        this.chordMm = chordMm;
    }

    static List<List<Coordinate>> of(Tool t, double chordMm) {
        if (t.shape() == ToolShape.CLUSTER) {
            return t.cluster().stream().map(p -> new Outline(chordMm).one(t, p.x(), p.y())).toList();
        }
        return List.of(new Outline(chordMm).one(t, 0, 0));
    }

    /** Length of the whole outline, arcs exact: what a stroke in solid metal cuts, mm. */
    static double lengthMm(Tool t) {
        if (t.shape() == ToolShape.FREE_CONTOUR) {
            return t.freeContour().lengthMm();
        }
        int pieces = t.shape() == ToolShape.CLUSTER ? t.cluster().size() : 1;
        Outline one = new Outline(0.01);
        List<Coordinate> ring = one.one(t, 0, 0);
        double polygon = 0;
        for (int i = 0; i < ring.size(); i++) {
            polygon += ring.get(i).distance(ring.get((i + 1) % ring.size()));
        }
        return pieces * (polygon - one.chordsMm + one.arcsMm);
    }

    private List<Coordinate> one(Tool t, double x, double y) {
        double l = t.lengthMm();
        double w = t.widthMm();
        switch (t.shape()) {
            case ROUND -> arc(x, y, l / 2, 0, 2 * Math.PI, false);
            case SQUARE, RECTANGLE, SLITTING -> box(x, y, l, w, t.cornerRadiusMm());
            case OBROUND -> box(x, y, l, w, w / 2);
            case SINGLE_FLAT -> flat(l / 2, w - l / 2);
            case DOUBLE_FLAT -> flats(l / 2, w / 2);
            case HEXAGON -> corners(6, l / Math.sqrt(3), Math.PI / 6);
            case TRIANGLE -> corners(3, l / Math.sqrt(3), Math.PI / 2);
            case CORNER_RADIUS -> hollow(l / 2, t.cornerRadiusMm());
            case CLUSTER -> single(x, y, l, w, t.cornerRadiusMm());
            case FREE_CONTOUR -> Flattening.points(t.freeContour(), chordMm).forEach(this::add);
            default -> single(x, y, l, w, 0);
        }
        return ring;
    }

    private void single(double x, double y, double l, double w, double r) {
        if (Math.abs(l - w) < 1e-9) {
            arc(x, y, l / 2, 0, 2 * Math.PI, false);
        } else {
            box(x, y, l, w, r);
        }
    }

    private void box(double x, double y, double l, double w, double r) {
        double a = l / 2 - r;
        double b = w / 2 - r;
        arc(x + a, y - b, r, -Math.PI / 2, 0, true);
        arc(x + a, y + b, r, 0, Math.PI / 2, true);
        arc(x - a, y + b, r, Math.PI / 2, Math.PI, true);
        arc(x - a, y - b, r, Math.PI, 3 * Math.PI / 2, true);
    }

    private void flat(double r, double height) {
        double a = Math.asin(height / r);
        arc(0, 0, r, Math.PI - a, 2 * Math.PI + a, true);
    }

    private void flats(double r, double half) {
        double a = Math.asin(half / r);
        arc(0, 0, r, -a, a, true);
        arc(0, 0, r, Math.PI - a, Math.PI + a, true);
    }

    private void corners(int n, double r, double first) {
        for (int i = 0; i < n; i++) {
            add(Point.polar(r, first + 2 * Math.PI * i / n));
        }
    }

    private void hollow(double h, double r) {
        arc(h, -h, r, Math.PI, Math.PI / 2, true);
        arc(h, h, r, 3 * Math.PI / 2, Math.PI, true);
        arc(-h, h, r, 0, -Math.PI / 2, true);
        arc(-h, -h, r, Math.PI / 2, 0, true);
    }

    private void arc(double x, double y, double r, double from, double to, boolean withEnd) {
        if (r < 1e-9) {
            add(new Point(x, y));
            return;
        }
        double step = 2 * Math.acos(Math.max(0, 1 - chordMm / r));
        int n = Math.max(4, (int) Math.ceil(Math.abs(to - from) / step));
        arcsMm += r * Math.abs(to - from);
        chordsMm += n * 2 * r * Math.sin(Math.abs(to - from) / n / 2);
        for (int i = 0; i < (withEnd ? n + 1 : n); i++) {
            add(new Point(x, y).plus(Point.polar(r, from + (to - from) * i / n)));
        }
    }

    private void add(Point p) {
        Coordinate c = new Coordinate(p.x(), p.y());
        if (ring.isEmpty() || ring.getLast().distance(c) > 1e-9) {
            ring.add(c);
        }
    }
}
