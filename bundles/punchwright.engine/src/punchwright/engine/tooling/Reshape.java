// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import punchwright.engine.feature.Feature;
import punchwright.engine.feature.FeatureKind;
import punchwright.engine.feature.FeatureSet;
import punchwright.engine.geometry.Arc;
import punchwright.engine.geometry.Bounds;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Line;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Pose;
import punchwright.engine.geometry.Segment;
import punchwright.engine.geometry.Shape;

/** A feature as it might be drawn instead: larger, with rounded inside corners, or turned with its part. */
final class Reshape {

    private static final double SHARP_DEG = 0.5;
    private static final double SHORT_MM = 1e-6;

    private Reshape() {
    }

    /** The opening in a large sheet with nothing else about it. */
    static FeatureSet alone(String part, Feature opening) {
        Bounds b = opening.contour().bounds().grown(1000);
        Shape sheet = new Shape(Contour.rectangle(b.minX(), b.minY(), b.width(), b.height()), List.of(opening.contour()));
        return new FeatureSet(part, sheet, List.of(opening), List.of());
    }

    /** The opening made so wide, about its centre: a rectangle only wider, anything else larger as a whole. */
    static Feature larger(Feature f, double widthMm) {
        double k = widthMm / f.widthMm();
        if (f.kind() == FeatureKind.RECTANGLE) {
            double length = Math.max(f.lengthMm(), widthMm);
            Contour c = Contour.rectangle(-length / 2, -widthMm / 2, length, widthMm).moved(Pose.at(f.center().x(), f.center()
                    .y(), f.angleDeg()));
            return with(f, f.kind(), length, widthMm, 0, c);
        }
        List<Segment> scaled = f.contour().segments().stream().map(s -> scaled(s, f.center(), k)).toList();
        return with(f, f.kind(), f.lengthMm() * k, widthMm, f.cornerRadiusMm() * k, new Contour(scaled));
    }

    private static Segment scaled(Segment s, Point about, double k) {
        return s instanceof Arc a ? new Arc(scaled(a.center(), about, k), k * a.radiusMm(), a.startRad(), a.sweepRad())
                : new Line(scaled(s.start(), about, k), scaled(s.end(), about, k));
    }

    private static Point scaled(Point p, Point about, double k) {
        return about.plus(p.minus(about).times(k));
    }

    private static Feature with(Feature f, FeatureKind kind, double length, double width, double radius, Contour contour) {
        Contour clockwise = contour.oriented(false);
        return new Feature(f.number(), kind, f.center(), f.angleDeg(), length, width, radius, clockwise, clockwise.segments(),
                "");
    }

    /**
     * The opening with every corner between straight edges in which the waste is convex rounded to a radius, and those that are
     * rounded to less; empty where an edge is too short for it.
     */
    static Optional<Feature> rounded(Feature f, double radiusMm) {
        List<Line> edges = new ArrayList<>();
        for (Segment s : f.path()) {
            if (s instanceof Line line) {
                edges.add(line);
            } else if (!(s instanceof Arc arc) || arc.sweepRad() >= 0 || arc.radiusMm() > radiusMm
                    || arc.sweepRad() < -Math.PI + 0.01) {
                return Optional.empty();
            }
        }
        if (edges.size() < 3) {
            return Optional.empty();
        }
        List<Point> corners = new ArrayList<>();
        for (int i = 0; i < edges.size(); i++) {
            Optional<Point> met = meet(edges.get(i), edges.get((i + 1) % edges.size()));
            if (met.isEmpty()) {
                return Optional.empty();
            }
            corners.add(met.get());
        }
        return filleted(corners, radiusMm).map(c -> with(f, FeatureKind.FREE_OPENING, f.lengthMm(), f.widthMm(), 0, c));
    }

    private static Optional<Point> meet(Line a, Line b) {
        Point u = a.tangentAt(0);
        Point v = b.tangentAt(0);
        double cross = u.cross(v);
        return Math.abs(cross) < Math.sin(Math.toRadians(SHARP_DEG)) ? Optional.empty()
                : Optional.of(a.start().plus(u.times(b.start().minus(a.start()).cross(v) / cross)));
    }

    /** A polygon run with the material on the left; its right turns rounded. */
    private static Optional<Contour> filleted(List<Point> corners, double r) {
        int n = corners.size();
        List<Segment> all = new ArrayList<>();
        double[] cut = new double[n];
        for (int i = 0; i < n; i++) {
            double turn = turnRad(corners, i);
            cut[i] = turn < 0 ? r * Math.tan(-turn / 2) : 0;
        }
        for (int i = 0; i < n; i++) {
            Point from = corners.get(i);
            Point to = corners.get((i + 1) % n);
            Point dir = to.minus(from).unit();
            double rest = from.distance(to) - cut[i] - cut[(i + 1) % n];
            if (rest < -SHORT_MM) {
                return Optional.empty();
            }
            if (rest > SHORT_MM) {
                all.add(new Line(from.plus(dir.times(cut[i])), to.minus(dir.times(cut[(i + 1) % n]))));
            }
            double turn = turnRad(corners, (i + 1) % n);
            if (turn < 0) {
                Point center = to.minus(dir.times(cut[(i + 1) % n])).minus(dir.left().times(r));
                all.add(new Arc(center, r, dir.left().angleRad(), turn));
            }
        }
        return Optional.of(new Contour(all));
    }

    private static double turnRad(List<Point> corners, int i) {
        int n = corners.size();
        Point in = corners.get(i).minus(corners.get((i + n - 1) % n));
        Point out = corners.get((i + 1) % n).minus(corners.get(i));
        return Math.atan2(in.cross(out), in.dot(out));
    }

    /** The whole part turned about its origin, degrees counter-clockwise. */
    static FeatureSet turned(FeatureSet set, double deg) {
        Pose pose = Pose.at(0, 0, deg);
        List<Feature> features = set.features().stream().map(f -> new Feature(f.number(), f.kind(), pose.apply(f.center()),
                pose.applyAngleDeg(f.angleDeg()), f.lengthMm(), f.widthMm(), f.cornerRadiusMm(), f.contour() == null ? null
                        : f.contour().moved(pose), f.path().stream().map(s -> s.moved(pose)).toList(), f.form(), f.direction()))
                .toList();
        return new FeatureSet(set.part(), new Shape(set.shape().outer().moved(pose), set.shape().holes().stream()
                .map(h -> h.moved(pose)).toList()), features, List.of());
    }
}
