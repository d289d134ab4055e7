// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.proof;

import java.util.List;

import org.locationtech.jts.geom.Envelope;

/** Forms stay untouched: after a form stands, no stroke comes nearer to it than a distance. */
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
                grid.near(box).stream().filter(s -> s.turn() > form.turn() && s.cuts()).forEach(s -> look(form, s, least));
            }
        }
    }

    private void look(Stroke form, Stroke s, double least) {
        double gap = s.areaAbout(form.x(), form.y()).distance(form.punch().area());
        if (gap < least - 1e-6) {
            report.add(ProofReason.FORM_STRUCK, s.at(), s.name(), s.hit().id(), form.punch().tool().name(), gap, least);
        }
    }
}
