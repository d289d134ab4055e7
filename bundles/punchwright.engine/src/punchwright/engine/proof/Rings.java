// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.proof;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.locationtech.jts.index.strtree.STRtree;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

import punchwright.engine.geometry.Arc;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Flattening;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Segment;
import punchwright.engine.geometry.Shape;

/** All closed edges of the parts on the sheet; edges of equal form (but for a shift) share it. */
final class Rings {

    private static final double GRID_MM = 1e-4;

    private final double toleranceMm;
    private final Map<List<Long>, RingForm> forms = new HashMap<>();
    private final List<Ring> all = new ArrayList<>();
    private final List<Ring> outlines = new ArrayList<>();
    private final STRtree tree = new STRtree();

    Rings(List<Shape> parts, double toleranceMm) {
        this.toleranceMm = toleranceMm;
        for (int i = 0; i < parts.size(); i++) {
            Ring outline = ring(parts.get(i).outer(), false, i);
            outlines.add(outline);
            all.add(outline);
            for (Contour hole : parts.get(i).holes()) {
                all.add(ring(hole, true, i));
            }
        }
        all.forEach(r -> tree.insert(r.box(0), r));
        tree.build();
    }

    List<Ring> all() {
        return all;
    }

    /** Outline of each part, by part number. */
    List<Ring> outlines() {
        return outlines;
    }

    /** Edges whose box meets the given one. */
    @SuppressWarnings("unchecked")
    List<Ring> near(Envelope box) {
        return tree.query(box);
    }

    /** The part whose material is at a point of the sheet (inside more outlines than openings), or -1. */
    int partAt(double x, double y) {
        int depth = 0;
        int part = -1;
        for (Ring r : near(new Envelope(new Coordinate(x, y)))) {
            if (r.contains(x, y)) {
                depth += r.form().opening() ? -1 : 1;
                part = r.form().opening() ? part : Math.max(part, r.part());
            }
        }
        return depth > 0 ? part : -1;
    }

    /** A part whose outline encloses a point of the sheet, or -1. */
    int outlineAt(double x, double y) {
        return near(new Envelope(new Coordinate(x, y))).stream().filter(r -> !r.form().opening() && r.contains(x, y))
                .mapToInt(Ring::part).max().orElse(-1);
    }

    private Ring ring(Contour contour, boolean opening, int part) {
        Point anchor = contour.segments().getFirst().start();
        List<Long> key = new ArrayList<>();
        key.add(opening ? 1L : 0L);
        for (Segment s : contour.segments()) {
            add(key, s.start().minus(anchor));
            if (s instanceof Arc a) {
                add(key, a.center().minus(anchor));
                key.add(Math.round(a.sweepRad() * 1e7));
            }
        }
        RingForm form = forms.computeIfAbsent(key, k -> form(contour, anchor, opening));
        return new Ring(form, anchor.x(), anchor.y(), part);
    }

    private static void add(List<Long> key, Point p) {
        key.add(Math.round(p.x() / GRID_MM));
        key.add(Math.round(p.y() / GRID_MM));
    }

    private RingForm form(Contour contour, Point anchor, boolean opening) {
        List<Point> points = Flattening.points(contour, RingForm.chordMm(toleranceMm)).stream()
                .map(p -> p.minus(anchor)).toList();
        return new RingForm(points, opening, toleranceMm);
    }
}
