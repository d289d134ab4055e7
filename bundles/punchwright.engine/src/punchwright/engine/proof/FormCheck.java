// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.proof;

import java.util.ArrayList;
import java.util.List;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

import punchwright.engine.tooling.Tool;
import punchwright.engine.tooling.ToolShape;

/**
 * Forms: each that the drawing asks for is made, in as many hits as the tool's record says, none is made elsewhere in a part, and
 * after a form stands no cut comes nearer to it than a distance, no other form on it and no body of a tool down on it. Nearer
 * than the record of the forming tool allows is a warning.
 */
final class FormCheck {

    /** Least distance over thickness, and the most it can be in mm: edge distance near forms, common practice, no source. */
    private static final double BY_THICKNESS = 1.5;
    private static final double MOST_MM = 5;
    /** Sheet between two forms of one tool over thickness, louvres at their pitch: common practice, no source. */
    private static final double PITCH_BY_THICKNESS = 4;

    private final ProofJob job;
    private final StrokeGrid grid;
    private final Report report;

    FormCheck(ProofJob job, StrokeGrid grid, Report report) {
        this.job = job;
        this.grid = grid;
        this.report = report;
    }

    void run(List<Stroke> strokes) {
        double least = Math.min(MOST_MM, BY_THICKNESS * job.thicknessMm());
        double body = strokes.stream().mapToDouble(s -> s.punch().tool().room().bodyMm() / 2).max().orElse(0);
        for (Stroke form : strokes) {
            if (!form.cuts() && form.punch().tool().formHeightMm() != 0) {
                Envelope box = new Envelope(form.box());
                box.expandBy(Math.max(body, Math.max(least, form.punch().tool().room().keepClearMm())));
                grid.near(box).stream().filter(s -> s.turn() > form.turn()).forEach(s -> look(form, s, least));
            }
        }
    }

    private void look(Stroke form, Stroke s, double leastMm) {
        boolean own = s.hit().tool().id().equals(form.hit().tool().id());
        if (own && (s.at().distance(form.at()) < 1e-3 || demandAt(form) != null && demandAt(form) == demandAt(s))) {
            return;
        }
        double least = s.cuts() ? leastMm : 0;
        double gap = s.areaAbout(form.x(), form.y()).distance(form.punch().area());
        double body = own || !stands(form) ? 0 : s.punch().tool().room().bodyMm() / 2;
        double keep = form.punch().tool().room().keepClearMm();
        double asked = own ? Math.min(keep, PITCH_BY_THICKNESS * job.thicknessMm()) : keep;
        if (gap < least - 1e-6 || gap == 0) {
            struck(form, s, gap, least);
        } else if (body > 0 && toAxis(form, s) < body - 1e-6) {
            struck(form, s, toAxis(form, s), body);
        } else if (gap < asked - 1e-6) {
            report.add(ProofReason.FORM_CLOSE, s.at(), s.name(), s.hit().id(), form.punch().tool().name(), gap, asked,
                    form.hit().id());
        }
    }

    private void struck(Stroke form, Stroke s, double gap, double least) {
        report.add(ProofReason.FORM_STRUCK, s.at(), s.name(), s.hit().id(), form.punch().tool().name(), gap, least,
                s.cuts() ? 0 : 1);
    }

    private static double toAxis(Stroke form, Stroke s) {
        return form.punch().area().distance(Punch.FACTORY.createPoint(new Coordinate(s.x() - form.x(), s.y() - form.y())));
    }

    /** Hits in one place that a tool makes at most: by its record; a louvre is formed by 3 t a hit; 1 for all others. */
    static int hitsInOnePlace(Tool tool, double thicknessMm) {
        int byHeight = tool.shape() == ToolShape.LOUVRE ? (int) Math.ceil(Math.abs(tool.formHeightMm()) / (3 * thicknessMm) - 1e-9)
                : 1;
        return Math.max(1, tool.room().hitsPerForm() > 0 ? tool.room().hitsPerForm() : byHeight);
    }

    /** Marks and countersinks lie in the sheet. */
    static boolean stands(Stroke s) {
        ToolShape shape = s.punch().tool().shape();
        return !s.cuts() && s.punch().tool().formHeightMm() != 0 && shape != ToolShape.MARKING && shape != ToolShape.COUNTERSINK;
    }

    private ProofForm demandAt(Stroke s) {
        return job.forms().stream().filter(f -> makes(s, f)).findFirst().orElse(null);
    }

    /** Compares the forms asked for with those made. */
    void demanded(List<Stroke> strokes, Rings rings) {
        if (job.forms().isEmpty()) {
            return;
        }
        List<Stroke> left = new ArrayList<>(strokes.stream().filter(s -> !s.cuts()).toList());
        for (ProofForm f : job.forms()) {
            List<Stroke> made = left.stream().filter(s -> makes(s, f)).toList();
            if (made.isEmpty()) {
                report.add(ProofReason.FORM_MISSING, f.at(), "part " + (f.part() + 1), f.part() + 1, f.shape().name());
            } else if (made.size() < made.getFirst().punch().tool().room().hitsPerForm()) {
                report.add(ProofReason.FORM_UNFINISHED, f.at(), made.getLast().name(), f.part() + 1, made.size(),
                        made.getFirst().punch().tool().room().hitsPerForm(), made.getFirst().punch().tool().name());
            } else if (!complete(made, f)) {
                report.add(ProofReason.FORM_GAP, f.at(), "part " + (f.part() + 1), f.part() + 1, f.lengthMm(),
                        made.getFirst().punch().tool().name());
            }
            left.removeAll(made);
        }
        for (Stroke s : left) {
            int part = rings.outlineAt(s.x(), s.y());
            if (part >= 0) {
                report.add(ProofReason.FORM_UNASKED, s.at(), s.name(), s.hit().id(), s.punch().tool().name(), part + 1);
            }
        }
    }

    private boolean makes(Stroke s, ProofForm f) {
        double half = Math.max(1, s.punch().tool().lengthMm() / 2);
        double slackDeg = Math.toDegrees(job.toleranceMm() / half);
        double a = Math.toRadians(f.angleDeg());
        double dx = s.x() - f.at().x();
        double dy = s.y() - f.at().y();
        double along = Math.max(0, Math.abs(dx * Math.cos(a) + dy * Math.sin(a)) - beyond(s, f));
        return s.punch().tool().shape() == f.shape() && Math.hypot(along, dy * Math.cos(a) - dx * Math.sin(a)) <= job.toleranceMm()
                && Symmetry.same(s.punch().tool(), s.hit().angleDeg(), f.angleDeg(), slackDeg);
    }

    /** How far the axis of a roller goes from the middle of a bead to either end. */
    private static double beyond(Stroke s, ProofForm f) {
        return f.shape() == ToolShape.ROLLER ? Math.max(0, (f.lengthMm() - s.punch().tool().lengthMm()) / 2) : 0;
    }

    /** Whether hits one behind the other reach both ends of a bead and none is more than half the roller from the next. */
    private boolean complete(List<Stroke> made, ProofForm f) {
        double a = Math.toRadians(f.angleDeg());
        double end = beyond(made.getFirst(), f);
        double[] along = made.stream().mapToDouble(s -> (s.x() - f.at().x()) * Math.cos(a) + (s.y() - f.at().y()) * Math.sin(a))
                .sorted().toArray();
        boolean whole = along[0] <= -end + job.toleranceMm() && along[along.length - 1] >= end - job.toleranceMm();
        for (int i = 1; i < along.length; i++) {
            whole &= along[i] - along[i - 1] <= made.getFirst().punch().tool().lengthMm() / 2;
        }
        return whole;
    }
}
