// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * Exact contours of the openings that have a name, about their centre, counter-clockwise, sizes in mm. Length lies along
 * x; a single flat lies on the +y side; a hexagon has two flats across x; a triangle stands on a side along x, with its
 * centre in the centroid; a keyhole's slot points to +x from the centre of its round; an arc slot runs along +x in its
 * middle and bends to the left. Sizes that make no such form give null.
 */
public final class Openings {

    private Openings() {
    }

    public static Contour round(double diameterMm) {
        return diameterMm > 0 ? Contour.circle(Point.ORIGIN, diameterMm) : null;
    }

    /** Rectangle or square; sharp corners where the radius is 0; an obround where it is half the width. */
    public static Contour rectangle(double lengthMm, double widthMm, double cornerRadiusMm) {
        if (!(lengthMm > 0 && widthMm > 0 && cornerRadiusMm >= 0 && 2 * cornerRadiusMm <= Math.min(lengthMm, widthMm) + 1e-9)) {
            return null;
        }
        return cornerRadiusMm == 0 ? Contour.rectangle(-lengthMm / 2, -widthMm / 2, lengthMm, widthMm)
                : rounded(lengthMm, widthMm, cornerRadiusMm);
    }

    /** Round with one flat; {@code heightMm} over the flat, above 0 and below the diameter. */
    public static Contour singleFlat(double diameterMm, double heightMm) {
        return flats(diameterMm, diameterMm / 2, heightMm - diameterMm / 2);
    }

    /** Round with two flats; {@code acrossMm} over the flats, above 0 and below the diameter. */
    public static Contour doubleFlat(double diameterMm, double acrossMm) {
        return acrossMm > 0 ? flats(diameterMm, acrossMm / 2, acrossMm / 2) : null;
    }

    public static Contour hexagon(double acrossFlatsMm) {
        return acrossFlatsMm > 0 ? regular(6, acrossFlatsMm / Math.sqrt(3), Math.PI / 6) : null;
    }

    /** Equilateral triangle. */
    public static Contour triangle(double sideMm) {
        return sideMm > 0 ? regular(3, sideMm / Math.sqrt(3), Math.PI / 2) : null;
    }

    private static Contour rounded(double length, double width, double r) {
        double x = length / 2 - r;
        double y = width / 2 - r;
        if (y < 1e-9 && x > 1e-9) {
            return withLines(List.of(new Arc(new Point(x, 0), r, -Math.PI / 2, Math.PI),
                    new Arc(new Point(-x, 0), r, Math.PI / 2, Math.PI)));
        }
        Point[] centers = {new Point(x, -y), new Point(x, y), new Point(-x, y), new Point(-x, -y)};
        List<Segment> arcs = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            arcs.add(new Arc(centers[i], r, (i - 1) * Math.PI / 2, Math.PI / 2));
        }
        return withLines(arcs);
    }

    /** Puts lines between arcs whose ends do not meet. */
    private static Contour withLines(List<Segment> arcs) {
        List<Segment> all = new ArrayList<>();
        for (int i = 0; i < arcs.size(); i++) {
            Segment next = arcs.get((i + 1) % arcs.size());
            all.add(arcs.get(i));
            if (arcs.get(i).end().distance(next.start()) > 1e-9) {
                all.add(new Line(arcs.get(i).end(), next.start()));
            }
        }
        return new Contour(all);
    }

    /** A circle cut at {@code -below} and {@code above} in y; no cut where that is the radius. */
    private static Contour flats(double diameter, double below, double above) {
        double r = diameter / 2;
        if (Math.abs(above) >= r || below > r) {
            return null;
        }
        double low = -Math.asin(Math.min(1, below / r));
        double high = Math.asin(above / r);
        return below >= r ? withLines(List.of(new Arc(Point.ORIGIN, r, Math.PI - high, Math.PI + 2 * high)))
                : withLines(List.of(new Arc(Point.ORIGIN, r, low, high - low),
                new Arc(Point.ORIGIN, r, Math.PI - high, high - low)));
    }

    private static Contour regular(int n, double outRadius, double firstRad) {
        List<Point> corners = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            corners.add(Point.polar(outRadius, firstRad + i * 2 * Math.PI / n));
        }
        return Contour.polygon(corners);
    }

    /** A round with a slot; {@code overallMm} over all, the slot's end half round. */
    public static Contour keyhole(double overallMm, double slotWidthMm, double roundRadiusMm) {
        double r = roundRadiusMm;
        double width = slotWidthMm;
        double reach = overallMm - r;
        double end = reach - width / 2;
        if (width >= 2 * r || end <= Math.sqrt(r * r - width * width / 4)) {
            return null;
        }
        double open = Math.asin(width / (2 * r));
        return withLines(List.of(new Arc(Point.ORIGIN, r, open, 2 * Math.PI - 2 * open),
                new Arc(new Point(end, 0), width / 2, -Math.PI / 2, Math.PI)));
    }

    /** Slot along an arc; length over all along the centre line, radius of the centre line. */
    public static Contour arcSlot(double lengthMm, double widthMm, double centreRadiusMm) {
        double length = lengthMm;
        double width = widthMm;
        double radius = centreRadiusMm;
        double half = (length - width) / (2 * radius);
        if (half <= 0 || half >= Math.PI || radius <= width / 2) {
            return null;
        }
        Point c = new Point(0, radius);
        double bottom = -Math.PI / 2;
        Point left = c.plus(Point.polar(radius, bottom - half));
        Point right = c.plus(Point.polar(radius, bottom + half));
        return withLines(List.of(new Arc(c, radius + width / 2, bottom - half, 2 * half),
                new Arc(right, width / 2, bottom + half, Math.PI), new Arc(c, radius - width / 2, bottom + half, -2 * half),
                new Arc(left, width / 2, bottom - half + Math.PI, Math.PI)));
    }
}
