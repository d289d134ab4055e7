// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.proof;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

import punchwright.engine.geometry.Point;
import punchwright.engine.holding.ClampArrangement;
import punchwright.engine.press.FormClearance;
import punchwright.engine.press.Place;
import punchwright.engine.tooling.Tool;

/**
 * Forms that stand while the sheet travels and is clamped again: none higher than what passes under the head or deeper than
 * what passes over the table, none under a clamp of a later holding, none under the hold-down of a reposition.
 */
final class StandingForms {

    private final ProofJob job;
    private final HoldingCheck holding;
    private final Report report;

    StandingForms(ProofJob job, HoldingCheck holding, Report report) {
        this.job = job;
        this.holding = holding;
        this.report = report;
    }

    void run(List<Stroke> strokes) {
        List<Stroke> forms = strokes.stream().filter(FormCheck::stands).toList();
        Map<String, Stroke> tools = new LinkedHashMap<>();
        forms.forEach(f -> tools.putIfAbsent(f.punch().tool().id(), f));
        tools.values().forEach(this::passes);
        clamped(forms);
        for (int i = 1; i < strokes.size() && !forms.isEmpty(); i++) {
            reposition(strokes.get(i - 1), strokes.get(i).hit().holding(), forms);
        }
    }

    private void passes(Stroke first) {
        Tool tool = first.punch().tool();
        FormClearance room = job.machine().formClearance();
        boolean up = tool.formHeightMm() > 0;
        double given = up ? room.upMm() : room.downMm();
        double clear = given > 0 ? given : up ? Math.max(0, job.machine().maxThicknessMm() - job.thicknessMm()) : 0;
        double high = Math.abs(tool.formHeightMm());
        if (high > clear + 1e-9) {
            report.add(given > 0 ? ProofReason.FORM_HIGH : ProofReason.FORM_ROOM_UNKNOWN, first.at(), first.name(),
                    first.hit().id(), tool.name(), high, clear, up ? 0 : 1);
        }
    }

    private void clamped(List<Stroke> forms) {
        for (int h = 1; h < job.holdings().size(); h++) {
            ClampArrangement c = job.holdings().get(h);
            for (double center : c.clampCentersMm()) {
                Envelope box = holding.clampBox(center, c.turned());
                Geometry clamp = Punch.FACTORY.toGeometry(box);
                for (Stroke f : forms) {
                    if (f.hit().holding() < h && f.box().intersects(box) && f.areaAbout(0, 0).intersects(clamp)) {
                        report.add(ProofReason.FORM_CLAMPED, f.at(), f.name(), h + 1, center, f.punch().tool().name(),
                                f.hit().id());
                    }
                }
            }
        }
    }

    /** The sheet is held down about the tool axis where the last hit before the reposition, or the move after it, left it. */
    private void reposition(Stroke last, int next, List<Stroke> forms) {
        double radius = radiusMm();
        for (int h = last.hit().holding(); h < next && next < job.holdings().size() && radius > 0; h++) {
            Point at = job.parks().getOrDefault(h, last.at());
            boolean turned = job.holdings().get(h).turned() != job.holdings().get(h + 1).turned();
            List<Stroke> under = new ArrayList<>();
            for (Stroke f : turned ? List.<Stroke>of() : forms) {
                if (f.turn() <= last.turn() && distance(f, at) < radius - 1e-6) {
                    under.add(f);
                }
            }
            if (!under.isEmpty()) {
                Stroke f = under.getFirst();
                report.add(ProofReason.FORM_HELD_DOWN, f.at(), f.name(), h + 1, f.punch().tool().name(), f.hit().id(),
                        distance(f, at), radius, under.size());
            }
        }
    }

    private static double distance(Stroke form, Point at) {
        return form.punch().area().distance(Punch.FACTORY.createPoint(new Coordinate(at.x() - form.x(), at.y() - form.y())));
    }

    /** As the record says, else the largest place. */
    private double radiusMm() {
        double given = job.machine().formClearance().holdDownMm();
        return (given > 0 ? given : job.machine().places().stream().mapToDouble(Place::maxToolDiameterMm).max().orElse(0)) / 2;
    }
}
