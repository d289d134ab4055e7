// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.dxf;

import java.util.ArrayList;
import java.util.List;

import punchwright.engine.geometry.Arc;
import punchwright.engine.geometry.Line;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Segment;

/**
 * A smooth curve as tangent-continuous arcs: biarcs, halved until each lies within the tolerance. A biarc is two arcs that
 * meet with one tangent and take the end points and end tangents of the curve (K. M. Bolton, "Biarc curves",
 * Computer-Aided Design 7 (1975) 89; the equal-length choice of the joint).
 */
final class BiarcFit {

    private static final int DEEPEST = 10;
    private static final int SAMPLES = 8;
    /** Least tolerance as a share of the size: 0.001 mm on 10 m. */
    private static final double FINEST = 1e-7;
    private static final double STRAIGHT = 1e-9;

    private final SmoothCurve curve;
    private final double toleranceMm;
    private final List<Segment> out = new ArrayList<>();

    private BiarcFit(SmoothCurve curve, double toleranceMm) {
        this.curve = curve;
        this.toleranceMm = toleranceMm;
    }

    /** Segments whose distance from the curve is at most the tolerance (at the sampled places) or 1e-7 of its size, in order. */
    static List<Segment> fit(SmoothCurve curve, double toleranceMm) {
        double size = curve.at(0).distance(curve.at(0.5)) + curve.at(0.5).distance(curve.at(1));
        BiarcFit fit = new BiarcFit(curve, Math.max(toleranceMm, FINEST * size));
        fit.fit(0, 1, 0);
        return fit.out;
    }

    private void fit(double from, double to, int depth) {
        Point p = curve.at(from);
        Point q = curve.at(to);
        List<Segment> pair = biarc(p, tangent(from, to), q, tangent(to, from).times(-1));
        if (depth >= DEEPEST || isNear(pair, from, to)) {
            pair.stream().filter(s -> s.lengthMm() > 0).forEach(out::add);
        } else {
            double middle = (from + to) / 2;
            fit(from, middle, depth + 1);
            fit(middle, to, depth + 1);
        }
    }

    /** Unit tangent at {@code t}, pointing towards {@code other}; from a short chord where the derivative vanishes. */
    private Point tangent(double t, double other) {
        Point d = curve.derivativeAt(t).times(Math.signum(other - t));
        Point chord = curve.at(t + (other - t) * 1e-4).minus(curve.at(t));
        return d.norm() < 1e-9 || d.dot(chord) < 0 ? chord.unit() : d.unit();
    }

    private boolean isNear(List<Segment> pair, double from, double to) {
        for (int i = 1; i < SAMPLES; i++) {
            Point p = curve.at(from + (to - from) * i / SAMPLES);
            double nearest = Double.POSITIVE_INFINITY;
            for (Segment s : pair) {
                nearest = Math.min(nearest, s.distance(p));
            }
            if (nearest > toleranceMm) {
                return false;
            }
        }
        double turned = 0;
        for (Segment s : pair) {
            turned = Math.max(turned, s instanceof Arc arc ? Math.abs(arc.sweepRad()) : 0);
        }
        return turned < Math.PI;
    }

    static List<Segment> biarc(Point p, Point tangentP, Point q, Point tangentQ) {
        Point v = q.minus(p);
        if (Math.abs(tangentP.cross(v)) <= STRAIGHT * v.norm() && Math.abs(tangentQ.cross(v)) <= STRAIGHT * v.norm()
                && tangentP.dot(v) >= 0) {
            return List.of(new Line(p, q));
        }
        double bend = 2 * (1 - tangentP.dot(tangentQ));
        double along = v.dot(tangentP.plus(tangentQ));
        double d = bend < 1e-12 ? v.dot(v) / (4 * v.dot(tangentQ))
                : (-along + Math.sqrt(along * along + bend * v.dot(v))) / bend;
        if (!(d > 0) || Double.isInfinite(d)) {
            return List.of(new Line(p, q));
        }
        Point joint = p.plus(q).plus(tangentP.minus(tangentQ).times(d)).times(0.5);
        return List.of(fromTangent(p, tangentP, joint), fromTangent(q, tangentQ.times(-1), joint).reversed());
    }

    /** The arc (or line) that leaves {@code p} in a direction and ends in {@code q}. */
    static Segment fromTangent(Point p, Point tangent, Point q) {
        Point chord = q.minus(p);
        double cross = tangent.cross(chord);
        if (Math.abs(cross) <= STRAIGHT * chord.norm()) {
            return new Line(p, q);
        }
        double signedRadius = chord.dot(chord) / (2 * cross);
        Point center = p.plus(tangent.left().times(signedRadius));
        return new Arc(center, Math.abs(signedRadius), p.minus(center).angleRad(), 2 * Math.atan2(cross, tangent.dot(chord)));
    }
}
