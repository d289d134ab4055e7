// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.proof;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

import punchwright.engine.geometry.Point;
import punchwright.engine.proof.RingResult.Gap;
import punchwright.engine.proof.RingResult.Gouge;
import punchwright.engine.proof.RingResult.Loose;

/**
 * Every edge of every part: entered by no stroke, cut everywhere but at its micro-joints, openings emptied. Edges of equal
 * form with equal strokes about them are looked at once.
 */
final class EdgeCheck {

    private static final double GRID_MM = 1e-4;
    private static final int FEW = 60;

    private record Key(RingForm form, List<Long> strokes) {
    }

    private final ProofJob job;
    private final Rings rings;
    private final StrokeGrid grid;
    private final Joints joints;
    private final Report report;
    private final Map<Key, RingResult> seen = new HashMap<>();
    private final List<RingState> states = new ArrayList<>();
    private final Set<Integer> gouging = new HashSet<>();
    private double worstMm;

    /** An edge on the sheet, the strokes near it (in a fixed order) and what they do. */
    record RingState(Ring ring, List<Stroke> strokes, RingResult result) {
    }

    EdgeCheck(ProofJob job, Rings rings, StrokeGrid grid, Joints joints, Report report) {
        this.job = job;
        this.rings = rings;
        this.grid = grid;
        this.joints = joints;
        this.report = report;
    }

    List<RingState> run() {
        for (Ring ring : rings.all()) {
            List<Stroke> strokes = strokesNear(ring);
            RingState state = new RingState(ring, strokes, result(ring, strokes));
            states.add(state);
            worstMm = Math.max(worstMm, state.result.worstMm());
            reportGouges(state);
            reportGaps(state);
            reportSlugs(state);
        }
        return states;
    }

    double worstMm() {
        return worstMm;
    }

    /** Turns of the strokes that enter a part across its edge. */
    Set<Integer> gouging() {
        return gouging;
    }

    private List<Stroke> strokesNear(Ring ring) {
        List<Stroke> near = new ArrayList<>();
        List<Stroke> candidates = grid.near(ring.box(0.5));
        for (Stroke s : candidates) {
            if (s.cuts() && (candidates.size() <= FEW || ring.form().opening() || meetsTrack(ring, s))) {
                near.add(s);
            }
        }
        near.sort(Comparator.comparingInt(Stroke::punchKey).thenComparingDouble(s -> grid(s.x() - ring.anchorX()))
                .thenComparingDouble(s -> grid(s.y() - ring.anchorY())).thenComparingInt(Stroke::turn));
        return near;
    }

    private static boolean meetsTrack(Ring ring, Stroke s) {
        Envelope box = new Envelope(s.box());
        box.translate(-ring.anchorX(), -ring.anchorY());
        boolean[] met = new boolean[1];
        ring.form().waste().visit(box, p -> met[0] = true);
        ring.form().part().visit(box, p -> met[0] = true);
        return met[0];
    }

    private RingResult result(Ring ring, List<Stroke> strokes) {
        List<Region> beyond = beyondSheet(ring);
        if (!beyond.isEmpty()) {
            return RingCheck.of(ring, strokes, beyond);
        }
        Long[] key = new Long[3 * strokes.size()];
        for (int i = 0; i < strokes.size(); i++) {
            key[3 * i] = (long) strokes.get(i).punchKey();
            key[3 * i + 1] = (long) grid(strokes.get(i).x() - ring.anchorX());
            key[3 * i + 2] = (long) grid(strokes.get(i).y() - ring.anchorY());
        }
        Key k = new Key(ring.form(), Arrays.asList(key));
        RingResult known = seen.get(k);
        if (known == null) {
            known = RingCheck.of(ring, strokes, beyond);
            seen.put(k, known);
        }
        return known;
    }

    private static double grid(double mm) {
        return Math.rint(mm / GRID_MM);
    }

    /** What is not sheet, about the ring's anchor, where the ring comes near the sheet's edge. */
    private List<Region> beyondSheet(Ring ring) {
        Envelope b = ring.box(0.5);
        double x = ring.anchorX();
        double y = ring.anchorY();
        List<Region> beyond = new ArrayList<>();
        if (b.getMinX() < 0) {
            beyond.add(Cell.halfPlane(1, 0, -x));
        }
        if (b.getMaxX() > job.sheetLengthMm()) {
            beyond.add(Cell.halfPlane(-1, 0, x - job.sheetLengthMm()));
        }
        if (b.getMinY() < 0) {
            beyond.add(Cell.halfPlane(0, 1, -y));
        }
        if (b.getMaxY() > job.sheetWidthMm()) {
            beyond.add(Cell.halfPlane(0, -1, y - job.sheetWidthMm()));
        }
        return beyond;
    }

    private void reportGouges(RingState state) {
        for (Gouge g : state.result.gouges()) {
            Stroke s = state.strokes.get(g.stroke());
            gouging.add(s.turn());
            report.add(ProofReason.GOUGE, onSheet(state.ring, g.at()), s.name(), s.hit().id(), s.punch().tool().name(),
                    g.depthMm(), job.toleranceMm(), state.ring.part() + 1);
        }
    }

    private void reportGaps(RingState state) {
        double chord = RingForm.chordMm(job.toleranceMm());
        for (Gap gap : state.result.gaps()) {
            Ring ring = state.ring;
            if (!joints.take(onSheet(ring, gap.from()), onSheet(ring, gap.middle()), onSheet(ring, gap.to()),
                    job.toleranceMm() + chord)) {
                report.add(ProofReason.UNCUT, onSheet(ring, gap.middle()), part(ring), gap.lengthMm(), ring.part() + 1);
            }
        }
    }

    private void reportSlugs(RingState state) {
        for (Loose slug : state.result.slugs()) {
            LooseReport.add(report, job, slug, onSheet(state.ring, slug.at()), part(state.ring));
        }
    }

    private static String part(Ring ring) {
        return "part " + (ring.part() + 1);
    }

    private static Point onSheet(Ring ring, Coordinate c) {
        return new Point(c.x + ring.anchorX(), c.y + ring.anchorY());
    }
}
