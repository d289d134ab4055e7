// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.ArrayList;
import java.util.List;

import punchwright.engine.feature.Feature;
import punchwright.engine.feature.FeatureKind;
import punchwright.engine.feature.FeatureSet;
import punchwright.engine.geometry.Arc;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Line;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Pose;
import punchwright.engine.geometry.Segment;
import punchwright.engine.geometry.Shape;

/** Builds parts with their features by hand, for tests of the choice of tools. */
final class Parts {

    private final Contour outer;
    private final List<Feature> openings = new ArrayList<>();
    private final List<Feature> notches = new ArrayList<>();
    private final List<Feature> forms = new ArrayList<>();

    private Parts(Contour outer) {
        this.outer = outer.oriented(true);
    }

    static Parts plate(double length, double width) {
        return new Parts(Contour.rectangle(0, 0, length, width));
    }

    static Parts outline(Contour outer) {
        return new Parts(outer);
    }

    /** Rectangle with rounded corners, lower left at the origin. */
    static Contour rounded(double length, double width, double r) {
        Point[] c = { new Point(length - r, r), new Point(length - r, width - r), new Point(r, width - r), new Point(r, r) };
        List<Segment> all = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            Arc arc = new Arc(c[i], r, (i - 1) * Math.PI / 2, Math.PI / 2);
            all.add(arc);
            Arc next = new Arc(c[(i + 1) % 4], r, i * Math.PI / 2, Math.PI / 2);
            if (arc.end().distance(next.start()) > 1e-9) {
                all.add(new Line(arc.end(), next.start()));
            }
        }
        return new Contour(all);
    }

    private Parts open(FeatureKind kind, Point center, double angle, double l, double w, double r, Contour contour) {
        Contour cw = contour.oriented(false);
        openings.add(new Feature(openings.size() + 1, kind, center, angle, l, w, r, cw, cw.segments(), ""));
        return this;
    }

    Parts round(double x, double y, double d) {
        Point c = new Point(x, y);
        return open(FeatureKind.ROUND, c, 0, d, d, 0, Contour.circle(c, d));
    }

    Parts rectangle(double x, double y, double angle, double l, double w) {
        Contour c = Contour.rectangle(-l / 2, -w / 2, l, w).moved(Pose.at(x, y, angle));
        return open(l == w ? FeatureKind.SQUARE : FeatureKind.RECTANGLE, new Point(x, y), angle, l, w, 0, c);
    }

    Parts roundedRectangle(double x, double y, double angle, double l, double w, double r) {
        Contour c = rounded(l, w, r).moved(Pose.at(-l / 2, -w / 2, 0)).moved(Pose.at(x, y, angle));
        FeatureKind kind = Math.abs(2 * r - w) < 1e-9 ? FeatureKind.OBROUND : FeatureKind.ROUNDED_RECTANGLE;
        return open(kind, new Point(x, y), angle, l, w, r, c);
    }

    Parts free(Contour c) {
        return open(FeatureKind.FREE_OPENING, c.bounds().center(), 0, c.bounds().width(), c.bounds().height(), 0, c);
    }

    Parts form(String form, double x, double y, double d) {
        forms.add(new Feature(0, FeatureKind.FORM, new Point(x, y), 0, d, d, 0, null, List.of(), form));
        return this;
    }

    /** Makes one notch of the outer segments {@code from} to {@code to} (excluded) instead of single edges. */
    Parts notch(FeatureKind kind, int from, int to) {
        List<Segment> path = outer.segments().subList(from, to);
        notches.add(new Feature(from, kind, path.getFirst().start(), 0, 0, 0, 0, null, path, ""));
        return this;
    }

    private boolean notched(Segment s) {
        return notches.stream().anyMatch(n -> n.path().contains(s));
    }

    FeatureSet build(String name) {
        List<Feature> all = new ArrayList<>(openings);
        for (Feature n : notches) {
            all.add(new Feature(all.size() + 1, n.kind(), n.center(), 0, 0, 0, 0, null, n.path(), ""));
        }
        for (Segment s : outer.segments().stream().filter(s -> !notched(s)).toList()) {
            boolean arc = s instanceof Arc;
            all.add(new Feature(all.size() + 1, arc ? FeatureKind.ARC_EDGE : FeatureKind.STRAIGHT_EDGE, s.pointAt(0.5),
                    Math.toDegrees(s.end().minus(s.start()).angleRad()), s.lengthMm(), 0, arc ? ((Arc) s).radiusMm() : 0, null,
                    List.of(s), ""));
        }
        for (Feature f : forms) {
            all.add(new Feature(all.size() + 1, f.kind(), f.center(), 0, f.lengthMm(), f.widthMm(), 0, null, List.of(),
                    f.form()));
        }
        return new FeatureSet(name, new Shape(outer, openings.stream().map(Feature::contour).toList()), all, List.of());
    }
}
