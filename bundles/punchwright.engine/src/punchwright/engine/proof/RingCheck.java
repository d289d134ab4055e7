// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.proof;

import java.util.ArrayList;
import java.util.List;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

import punchwright.engine.proof.RingResult.Gap;
import punchwright.engine.proof.RingResult.Gouge;
import punchwright.engine.proof.RingResult.Loose;

/** Looks at one edge and the strokes near it: what is entered, what is left uncut, what lies loose. */
final class RingCheck {

    /** Uncut stretches shorter than this are only the arithmetic's. */
    private static final double HAIR_MM = 0.01;
    private static final double TOUCH_MM = 1e-3;

    private final RingForm form;
    private final List<Stroke> strokes;
    private final double anchorX;
    private final double anchorY;
    private final Spans[] cover;
    private final Spans now = new Spans();
    private boolean cutByOne;

    private RingCheck(Ring ring, List<Stroke> strokes) {
        this.form = ring.form();
        this.strokes = strokes;
        this.anchorX = ring.anchorX();
        this.anchorY = ring.anchorY();
        this.cover = new Spans[form.waste().size()];
        for (int i = 0; i < cover.length; i++) {
            cover[i] = new Spans();
        }
    }

    /** @param beyond  areas about the anchor that hold no sheet at all */
    static RingResult of(Ring ring, List<Stroke> strokes, List<Region> beyond) {
        RingCheck check = new RingCheck(ring, strokes);
        for (Region r : beyond) {
            check.coverAll(r);
        }
        List<Gouge> gouges = check.cut();
        List<Gap> gaps = check.gaps();
        List<Loose> slugs = ring.form().opening() && gaps.isEmpty() && !check.cutByOne ? check.slugs() : List.of();
        return new RingResult(gaps, gouges, slugs, new EdgeGauge(ring, strokes).worstMm());
    }

    /** Whether the waste side is cut everywhere by these strokes. */
    static boolean cutFree(Ring ring, List<Stroke> strokes) {
        RingCheck check = new RingCheck(ring, strokes);
        check.cut();
        return check.gaps().isEmpty();
    }

    private void coverAll(Region region) {
        for (int p = 0; p < cover.length; p++) {
            form.waste().clip(p, region, 0, 0, cover[p]);
        }
    }

    private List<Gouge> cut() {
        List<Gouge> gouges = new ArrayList<>();
        double whole = 0;
        for (int p = 0; p < cover.length; p++) {
            whole += form.waste().lengthMm(p);
        }
        for (int i = 0; i < strokes.size(); i++) {
            Stroke s = strokes.get(i);
            Envelope box = new Envelope(s.box());
            box.translate(-anchorX, -anchorY);
            cutByOne |= coverBy(s, box) > whole - HAIR_MM;
            Coordinate touched = touched(s, box);
            if (touched != null) {
                gouges.add(new Gouge(i, touched, depth(s)));
            }
        }
        return gouges;
    }

    private double coverBy(Stroke s, Envelope box) {
        double[] sum = new double[1];
        form.waste().visit(box, p -> {
            section(form.waste(), p, s);
            if (!now.isEmpty()) {
                sum[0] += now.length() * form.waste().lengthMm(p);
                cover[p].addAll(now);
            }
        });
        return sum[0];
    }

    private Coordinate touched(Stroke s, Envelope box) {
        Coordinate[] found = new Coordinate[1];
        double[] most = {TOUCH_MM};
        form.part().visit(box, p -> {
            section(form.part(), p, s);
            double length = now.isEmpty() ? 0 : now.length() * form.part().lengthMm(p);
            if (length > most[0]) {
                most[0] = length;
                found[0] = form.part().at(p, (now.from(0) + now.to(0)) / 2);
            }
        });
        return found[0];
    }

    private void section(Track track, int piece, Stroke s) {
        now.clear();
        for (Region r : s.punch().regions()) {
            track.clip(piece, r, s.x() - anchorX, s.y() - anchorY, now);
        }
        now.merge(0);
    }

    private double depth(Stroke s) {
        Geometry area = s.areaAbout(anchorX, anchorY);
        Geometry entered = form.opening() ? area.difference(form.polygon()) : area.intersection(form.polygon());
        Geometry edge = form.polygon().getBoundary();
        double depth = 0;
        for (Coordinate c : entered.getCoordinates()) {
            depth = Math.max(depth, edge.distance(Punch.FACTORY.createPoint(c)));
        }
        return depth;
    }

    private List<Gap> gaps() {
        List<Gap> gaps = new ArrayList<>();
        GapRun run = new GapRun();
        for (int p = 0; p < cover.length; p++) {
            double slack = HAIR_MM / Math.max(HAIR_MM, form.waste().lengthMm(p));
            cover[p].merge(Math.min(slack, 0.5));
            double at = 0;
            for (int i = 0; i < cover[p].count(); i++) {
                run.add(p, at, cover[p].from(i));
                at = cover[p].to(i);
            }
            run.add(p, at, 1);
        }
        run.close(gaps);
        return gaps;
    }

    private List<Loose> slugs() {
        List<Geometry> cut = new ArrayList<>();
        strokes.forEach(s -> cut.add(s.areaAbout(anchorX, anchorY)));
        return cut.isEmpty() ? List.of() : LoosePieces.in(LoosePieces.difference(form.toWaste(), cut));
    }

    /** Joins uncovered stretches of neighbouring pieces to gaps. */
    private final class GapRun {
        private final List<List<double[]>> runs = new ArrayList<>();

        void add(int piece, double from, double to) {
            if (to - from <= 1e-12) {
                return;
            }
            double[] stretch = {piece, from, to};
            if (runs.isEmpty() || !meets(runs.getLast().getLast(), stretch)) {
                runs.add(new ArrayList<>());
            }
            runs.getLast().add(stretch);
        }

        private boolean meets(double[] a, double[] b) {
            return end(a).distance(form.waste().at((int) b[0], b[1])) < 1e-9;
        }

        private Coordinate end(double[] s) {
            return form.waste().at((int) s[0], s[2]);
        }

        void close(List<Gap> gaps) {
            if (runs.size() > 1 && meets(runs.getLast().getLast(), runs.getFirst().getFirst())) {
                runs.getLast().addAll(runs.removeFirst());
            }
            for (List<double[]> run : runs) {
                double length = run.stream().mapToDouble(s -> (s[2] - s[1]) * form.waste().lengthMm((int) s[0])).sum();
                if (length > HAIR_MM) {
                    gaps.add(gap(run, length));
                }
            }
        }

        private Gap gap(List<double[]> run, double length) {
            double rest = length / 2;
            int i = 0;
            while (i < run.size() - 1 && rest > lengthOf(run.get(i))) {
                rest -= lengthOf(run.get(i++));
            }
            double[] s = run.get(i);
            int piece = (int) s[0];
            Coordinate middle = form.waste().at(piece, s[1] + rest / form.waste().lengthMm(piece));
            double[] first = run.getFirst();
            return new Gap(form.waste().at((int) first[0], first[1]), middle, end(run.getLast()), stub(piece, middle), length);
        }

        private double lengthOf(double[] s) {
            return (s[2] - s[1]) * form.waste().lengthMm((int) s[0]);
        }

        /** A little beyond the track, on the waste side. */
        private Coordinate stub(int piece, Coordinate middle) {
            Coordinate a = form.waste().at(piece, 0);
            Coordinate b = form.waste().at(piece, 1);
            double nx = (b.y - a.y) / a.distance(b);
            double ny = (a.x - b.x) / a.distance(b);
            Coordinate one = new Coordinate(middle.x + 0.02 * nx, middle.y + 0.02 * ny);
            Coordinate other = new Coordinate(middle.x - 0.02 * nx, middle.y - 0.02 * ny);
            Geometry edge = form.polygon().getBoundary();
            return edge.distance(Punch.FACTORY.createPoint(one)) > edge.distance(Punch.FACTORY.createPoint(other)) ? one : other;
        }
    }
}
