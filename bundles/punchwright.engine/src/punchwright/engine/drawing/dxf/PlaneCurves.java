// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.dxf;

import java.util.ArrayList;
import java.util.List;

import punchwright.engine.geometry.Arc;
import punchwright.engine.geometry.Bounds;
import punchwright.engine.geometry.Line;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Segment;

/** Curves in space seen along z, as lines and arcs in mm: circles stay exact, ellipses and splines become biarcs. */
public final class PlaneCurves {

    /** How much the two half axes may differ, as a share, and still be a circle: digits lost in a text file. */
    private static final double ROUND = 1e-7;
    private static final double NONE = 1e-12;

    private PlaneCurves() {
    }

    /** Lines and arcs in order; empty when the curve stands upright on the plane. */
    public static List<Segment> segments(DrawnCurve drawn, Scaling scaling, double toleranceMm) {
        if (drawn.curves().size() == 1 && drawn.curves().get(0) instanceof RawLine line) {
            Segment s = line(line, scaling);
            return s == null ? List.of() : List.of(s);
        }
        List<Segment> out = new ArrayList<>(drawn.curves().size());
        for (RawCurve curve : drawn.curves()) {
            add(curve, scaling, toleranceMm, out);
        }
        return List.copyOf(out);
    }

    /** Whether {@link #segments} gives the curve as it is drawn, without approximation. */
    public static boolean isExact(DrawnCurve drawn) {
        for (RawCurve c : drawn.curves()) {
            boolean exact = c instanceof RawLine || c instanceof RawRound
                    || c instanceof RawArc a && isRound(new Point(a.u().x(), a.u().y()), new Point(a.v().x(), a.v().y()));
            if (!exact) {
                return false;
            }
        }
        return drawn.exact();
    }

    private static boolean isRound(Point u, Point v) {
        double nu = u.norm();
        double nv = v.norm();
        return Math.abs(nu - nv) <= ROUND * nu && Math.abs(u.dot(v)) <= ROUND * nu * nv;
    }

    private static void add(RawCurve curve, Scaling scaling, double toleranceMm, List<Segment> out) {
        switch (curve) {
            case RawLine line -> {
                Segment s = line(line, scaling);
                if (s != null) {
                    out.add(s);
                }
            }
            case RawRound round -> addArc(round.arc(), scaling, toleranceMm, out);
            case RawArc arc -> addArc(arc, scaling, toleranceMm, out);
            case RawSpline spline -> addSpline(spline, scaling, toleranceMm, out);
        }
    }

    private static Line line(RawLine l, Scaling s) {
        return l.x1() == l.x2() && l.y1() == l.y2() ? null
                : new Line(new Point(s.x(l.x1()), s.y(l.y1())), new Point(s.x(l.x2()), s.y(l.y2())));
    }

    private static void addArc(RawArc arc, Scaling scaling, double toleranceMm, List<Segment> out) {
        Point center = scaling.point(arc.center());
        Point u = scaling.vector(arc.u());
        Point v = scaling.vector(arc.v());
        double nu = u.norm();
        double nv = v.norm();
        if (Math.abs(u.cross(v)) <= NONE * (nu * nu + nv * nv)) {
            return;
        }
        if (isRound(u, v)) {
            double sign = Math.signum(u.cross(v));
            out.add(new Arc(center, (nu + nv) / 2, u.angleRad() + sign * arc.start(), sign * arc.sweep()));
            return;
        }
        int quarters = (int) Math.ceil(Math.abs(arc.sweep()) / (Math.PI / 2) - 1e-9);
        for (int i = 0; i < quarters; i++) {
            double step = arc.sweep() / quarters;
            out.addAll(BiarcFit.fit(new EllipseQuarter(center, u, v, arc.start() + i * step, step), toleranceMm));
        }
    }

    private static void addSpline(RawSpline spline, Scaling scaling, double toleranceMm, List<Segment> out) {
        double[] k = spline.knots();
        for (int span = spline.degree(); span < spline.control().size(); span++) {
            if (k[span + 1] - k[span] > NONE * (k[k.length - 1] - k[0])) {
                out.addAll(BiarcFit.fit(new SplineSpan(spline, span, scaling), toleranceMm));
            }
        }
    }

    /** A box in drawing units that holds the curve, not always the smallest. */
    public static Bounds extent(DrawnCurve drawn) {
        if (drawn.curves().size() == 1) {
            return extent(drawn.curves().get(0));
        }
        Bounds b = Bounds.EMPTY;
        for (RawCurve curve : drawn.curves()) {
            b = b.including(extent(curve));
        }
        return b;
    }

    private static Bounds extent(RawCurve curve) {
        return switch (curve) {
            case RawLine l -> new Bounds(Math.min(l.x1(), l.x2()), Math.min(l.y1(), l.y2()), Math.max(l.x1(), l.x2()),
                    Math.max(l.y1(), l.y2()));
            case RawRound r -> new Bounds(r.x() - r.radius(), r.y() - r.radius(), r.x() + r.radius(), r.y() + r.radius());
            case RawArc a -> {
                double x = Math.hypot(a.u().x(), a.v().x());
                double y = Math.hypot(a.u().y(), a.v().y());
                yield new Bounds(a.center().x() - x, a.center().y() - y, a.center().x() + x, a.center().y() + y);
            }
            case RawSpline s -> {
                Bounds b = Bounds.EMPTY;
                for (Vec3 c : s.control()) {
                    b = b.including(new Point(c.x(), c.y()));
                }
                yield b;
            }
        };
    }

    /** Lowest and highest z of the end points, in drawing units, as {min, max}; an empty range has min above max. */
    public static double[] heights(List<DrawnCurve> curves) {
        double[] range = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};
        for (DrawnCurve drawn : curves) {
            for (RawCurve curve : drawn.curves()) {
                switch (curve) {
                    case RawLine l -> {
                        include(range, l.z1());
                        include(range, l.z2());
                    }
                    case RawRound r -> include(range, r.z());
                    case RawArc a -> include(range, a.center().z());
                    case RawSpline s -> s.control().forEach(c -> include(range, c.z()));
                }
            }
        }
        return range;
    }

    private static void include(double[] range, double z) {
        range[0] = Math.min(range[0], z);
        range[1] = Math.max(range[1], z);
    }
}
