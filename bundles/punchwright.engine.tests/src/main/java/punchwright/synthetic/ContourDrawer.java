// SPDX-License-Identifier: EPL-2.0
package punchwright.synthetic;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

import punchwright.engine.geometry.Point;

/**
 * Draws a closed contour as drawings have it: begun anywhere, either way round, edges in pieces, as single lines and arcs or
 * as a polyline with bulges or with chords, with noise. No drawn point lies farther than the noise from the true edge, beside
 * what chords take off (0.003 to 0.009 mm); an arc of less than 1 mm radius is drawn in chords only without noise, since its
 * chords are so short that noise turns them by many degrees.
 */
final class ContourDrawer {

    private static final double LEAST_CHORD_RADIUS_MM = 1;
    private static final double LARGEST_STEP_RAD = Math.toRadians(22.5);
    private static final double LEAST_PIECE_MM = 1;

    private final Random random;
    private final DxfText out;
    private final double noiseMm;

    ContourDrawer(Random random, DxfText out, double noiseMm) {
        this.random = random;
        this.out = out;
        this.noiseMm = noiseMm;
    }

    private enum Way {
        ENTITIES, BULGES, CHORDS, CHORD_LINES
    }

    void draw(String layer, List<Curve> exact) {
        List<Curve> curves = new ArrayList<>(exact);
        if (random.nextBoolean()) {
            Collections.reverse(curves);
            curves.replaceAll(Curve::reversed);
        }
        Way way = way(curves);
        if (way == Way.ENTITIES && isCircle(curves) && random.nextBoolean()) {
            circle(layer, curves.get(0));
            return;
        }
        List<Curve> pieces = pieces(curves, way == Way.CHORDS || way == Way.CHORD_LINES);
        Collections.rotate(pieces, random.nextInt(pieces.size()));
        if (way == Way.ENTITIES || way == Way.CHORD_LINES) {
            pieces.forEach(p -> entity(layer, p));
        } else {
            polyline(layer, pieces);
        }
    }

    private Way way(List<Curve> curves) {
        boolean tooSmall = noiseMm > 0 && curves.stream().anyMatch(c -> c.isArc() && c.radius() < LEAST_CHORD_RADIUS_MM);
        int kind = random.nextInt(tooSmall ? 7 : 10);
        return kind < 4 ? Way.ENTITIES : kind < 7 ? Way.BULGES : kind < 9 ? Way.CHORDS : Way.CHORD_LINES;
    }

    private static boolean isCircle(List<Curve> curves) {
        return curves.size() == 2 && curves.get(0).isArc() && curves.get(1).isArc();
    }

    private void circle(String layer, Curve half) {
        Point c = shaken(half.center(), noiseMm / 2);
        out.circle(layer, c, half.radius() + noiseMm / 2 * (2 * random.nextDouble() - 1));
    }

    private List<Curve> pieces(List<Curve> curves, boolean chords) {
        double sagittaMm = 0.003 + 0.006 * random.nextDouble();
        List<Curve> pieces = new ArrayList<>();
        for (Curve c : curves) {
            if (c.isArc() && chords) {
                double step = Math.min(LARGEST_STEP_RAD, 2 * Math.acos(1 - sagittaMm / c.radius()));
                int n = (int) Math.ceil(Math.abs(c.sweepRad()) / step);
                for (int i = 0; i < n; i++) {
                    pieces.add(Curve.line(c.pointAt((double) i / n), c.pointAt((i + 1.0) / n)));
                }
            } else {
                split(c, pieces);
            }
        }
        return pieces;
    }

    private void split(Curve c, List<Curve> pieces) {
        int most = (int) Math.min(3, c.lengthMm() / LEAST_PIECE_MM / 2);
        int n = random.nextBoolean() || most < 2 ? 1 : 1 + random.nextInt(most);
        double from = 0;
        for (int i = 1; i <= n; i++) {
            double to = i == n ? 1 : (i + 0.4 * (random.nextDouble() - 0.5)) / n;
            pieces.add(n == 1 ? c : c.part(from, to));
            from = to;
        }
    }

    private Point shaken(Point p, double mostMm) {
        return Curve.at(p, mostMm * random.nextDouble(), 2 * Math.PI * random.nextDouble());
    }

    private void entity(String layer, Curve c) {
        if (!c.isArc()) {
            Point a = shaken(c.a(), noiseMm);
            Point b = shaken(c.b(), noiseMm);
            boolean back = random.nextBoolean();
            out.line(layer, back ? b : a, back ? a : b);
            return;
        }
        Point center = c.center();
        Point from = c.sweepRad() > 0 ? c.a() : c.b();
        double radius = c.radius();
        double start = Math.atan2(from.y() - center.y(), from.x() - center.x());
        double end = start + Math.abs(c.sweepRad());
        out.arc(layer, shaken(center, 0.4 * noiseMm), radius + 0.4 * signed(noiseMm), start + 0.2 * signed(noiseMm) / radius,
                end + 0.2 * signed(noiseMm) / radius);
    }

    private double signed(double most) {
        return most * (2 * random.nextDouble() - 1);
    }

    /** Shakes corners and middles of arcs; where an arc then leaves the noise, once more with less. */
    private void polyline(String layer, List<Curve> pieces) {
        List<Curve> drawn = pieces;
        for (double noise = noiseMm; noise > 0 && (drawn == pieces || !isClose(drawn, pieces)); noise = noise < noiseMm / 50
                ? 0 : 0.85 * noise) {
            drawn = shaken(pieces, noise);
        }
        List<Point> corners = drawn.stream().map(Curve::a).toList();
        List<Double> bulges = drawn.stream().map(c -> c.isArc() ? Math.tan(c.sweepRad() / 4) : 0).toList();
        out.polyline(layer, corners, bulges, random.nextBoolean());
    }

    private List<Curve> shaken(List<Curve> pieces, double noise) {
        int n = pieces.size();
        List<Point> corners = pieces.stream().map(c -> shaken(c.a(), noise)).toList();
        List<Curve> drawn = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            Curve c = pieces.get(i);
            drawn.add(new Curve(corners.get(i), c.isArc() ? shaken(c.m(), noise) : null, corners.get((i + 1) % n)));
        }
        return drawn;
    }

    private boolean isClose(List<Curve> drawn, List<Curve> pieces) {
        for (int i = 0; i < pieces.size(); i++) {
            Curve c = pieces.get(i);
            for (int k = 1; c.isArc() && k < 16; k++) {
                if (Math.abs(drawn.get(i).pointAt(k / 16.0).distance(c.center()) - c.radius()) > noiseMm) {
                    return false;
                }
            }
        }
        return true;
    }
}
