// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.demo;

import java.util.ArrayList;
import java.util.List;

import punchwright.engine.geometry.Arc;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Line;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Segment;

/** Contours as a draughtsman would draw them, in mm. */
final class Outline {

    private record Corner(Point at, double radiusMm) {
    }

    private final List<Corner> corners = new ArrayList<>();

    /** A sharp corner. */
    Outline to(double x, double y) {
        return to(x, y, 0);
    }

    /** A corner with a radius. */
    Outline to(double x, double y, double radiusMm) {
        corners.add(new Corner(new Point(x, y), radiusMm));
        return this;
    }

    Contour close() {
        List<Segment> segments = new ArrayList<>();
        int n = corners.size();
        for (int i = 0; i < n; i++) {
            Point from = leave(corners.get(i), corners.get((i + n - 1) % n), corners.get((i + 1) % n));
            Point to = enter(corners.get((i + 1) % n), corners.get(i), corners.get((i + 2) % n));
            segments.add(new Line(from, to));
            Corner next = corners.get((i + 1) % n);
            if (next.radiusMm() > 0) {
                Point out = leave(next, corners.get(i), corners.get((i + 2) % n));
                double turn = turn(corners.get(i), next, corners.get((i + 2) % n));
                segments.add(Arc.ofBulge(to, out, Math.tan(turn / 4)));
            }
        }
        return new Contour(segments);
    }

    private static double turn(Corner a, Corner b, Corner c) {
        Point in = b.at().minus(a.at());
        Point out = c.at().minus(b.at());
        return Math.atan2(in.cross(out), in.dot(out));
    }

    private static double setBack(Corner a, Corner b, Corner c) {
        return b.radiusMm() * Math.tan(Math.abs(turn(a, b, c)) / 2);
    }

    private static Point enter(Corner b, Corner a, Corner c) {
        return b.at().minus(b.at().minus(a.at()).unit().times(setBack(a, b, c)));
    }

    private static Point leave(Corner b, Corner a, Corner c) {
        return b.at().plus(c.at().minus(b.at()).unit().times(setBack(a, b, c)));
    }

    static Contour round(double x, double y, double diameterMm) {
        return Contour.circle(new Point(x, y), diameterMm);
    }

    /** A rectangle about its centre. */
    static Contour rectangle(double x, double y, double lengthMm, double widthMm) {
        return Contour.rectangle(x - lengthMm / 2, y - widthMm / 2, lengthMm, widthMm);
    }

    /** A rectangle with equal corner radii about its centre. */
    static Contour rectangle(double x, double y, double lengthMm, double widthMm, double radiusMm) {
        double a = lengthMm / 2;
        double b = widthMm / 2;
        return new Outline().to(x - a, y - b, radiusMm).to(x + a, y - b, radiusMm).to(x + a, y + b, radiusMm)
                .to(x - a, y + b, radiusMm).close();
    }

    /** A slot with round ends along x about its centre. */
    static Contour obround(double x, double y, double lengthMm, double widthMm) {
        return slot(x, y, lengthMm, widthMm, 1, 0);
    }

    /** A slot with round ends along y about its centre. */
    static Contour obroundUp(double x, double y, double lengthMm, double widthMm) {
        return slot(x, y, lengthMm, widthMm, 0, 1);
    }

    private static Contour slot(double x, double y, double lengthMm, double widthMm, double dx, double dy) {
        Point along = new Point(dx, dy);
        Point half = along.times((lengthMm - widthMm) / 2);
        Point side = along.left().times(widthMm / 2);
        Point c = new Point(x, y);
        Point a = c.minus(half).minus(side);
        Point b = c.plus(half).minus(side);
        Point d = c.plus(half).plus(side);
        Point e = c.minus(half).plus(side);
        return new Contour(List.of(new Line(a, b), Arc.ofBulge(b, d, 1), new Line(d, e), Arc.ofBulge(e, a, 1)));
    }

    /** A circle cut by two flats at {@code acrossMm}, flats along x. */
    static Contour doubleFlat(double x, double y, double diameterMm, double acrossMm) {
        double h = acrossMm / 2;
        double r = diameterMm / 2;
        double half = Math.sqrt(r * r - h * h);
        double sweep = 2 * Math.asin(h / r);
        Point a = new Point(x - half, y - h);
        Point b = new Point(x + half, y - h);
        Point c = new Point(x + half, y + h);
        Point d = new Point(x - half, y + h);
        return new Contour(List.of(new Line(a, b), Arc.ofBulge(b, c, Math.tan(sweep / 4)), new Line(c, d),
                Arc.ofBulge(d, a, Math.tan(sweep / 4))));
    }

    /** A circle cut by one flat below, {@code overMm} from the flat to the far side. */
    static Contour singleFlat(double x, double y, double diameterMm, double overMm) {
        double r = diameterMm / 2;
        double below = overMm - r;
        double half = Math.sqrt(r * r - below * below);
        double sweep = 2 * Math.PI - 2 * Math.acos(below / r);
        Point a = new Point(x - half, y - below);
        Point b = new Point(x + half, y - below);
        return new Contour(List.of(new Line(a, b), Arc.ofBulge(b, a, Math.tan(sweep / 4))));
    }

    /** A hexagon by its size across flats, two corners on the x axis. */
    static Contour hexagon(double x, double y, double acrossFlatsMm) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            points.add(new Point(x, y).plus(Point.polar(acrossFlatsMm / Math.sqrt(3), i * Math.PI / 3)));
        }
        return Contour.polygon(points);
    }
}
