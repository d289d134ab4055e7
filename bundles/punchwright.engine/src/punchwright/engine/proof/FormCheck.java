// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.proof;

import java.util.ArrayList;
import java.util.List;

import org.locationtech.jts.geom.Envelope;

/**
 * Forms: each that the drawing asks for is made, none is made elsewhere in a part, and after a form stands no cut comes nearer
 * to it than a distance and no other form on it.
 */
final class FormCheck {

    /** Least distance over thickness, and the most it can be in mm: edge distance near forms, common practice, no source. */
    private static final double BY_THICKNESS = 1.5;
    private static final double MOST_MM = 5;

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
        for (Stroke form : strokes) {
            if (!form.cuts() && form.punch().tool().formHeightMm() != 0) {
                Envelope box = new Envelope(form.box());
                box.expandBy(least);
                grid.near(box).stream().filter(s -> s.turn() > form.turn())
                        .forEach(s -> look(form, s, s.cuts() ? least : 0));
            }
        }
    }

    private void look(Stroke form, Stroke s, double least) {
        double gap = s.areaAbout(form.x(), form.y()).distance(form.punch().area());
        boolean again = s.hit().tool().id().equals(form.hit().tool().id()) && s.at().distance(form.at()) < 1e-3;
        if (!again && (gap < least - 1e-6 || gap == 0)) {
            report.add(ProofReason.FORM_STRUCK, s.at(), s.name(), s.hit().id(), form.punch().tool().name(), gap, least);
        }
    }

    /** Compares the forms asked for with those made. */
    void demanded(List<Stroke> strokes, Rings rings) {
        if (job.forms().isEmpty()) {
            return;
        }
        List<Stroke> left = new ArrayList<>(strokes.stream().filter(s -> !s.cuts()).toList());
        for (ProofForm f : job.forms()) {
            if (!left.removeIf(s -> makes(s, f))) {
                report.add(ProofReason.FORM_MISSING, f.at(), "part " + (f.part() + 1), f.part() + 1, f.shape().name());
            }
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
        return s.punch().tool().shape() == f.shape() && s.at().distance(f.at()) <= job.toleranceMm()
                && Symmetry.same(s.punch().tool(), s.hit().angleDeg(), f.angleDeg(), slackDeg);
    }
}
