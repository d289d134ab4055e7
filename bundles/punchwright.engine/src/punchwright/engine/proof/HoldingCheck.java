// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.proof;

import java.util.List;

import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

import punchwright.engine.geometry.Point;
import punchwright.engine.holding.ClampArrangement;
import punchwright.engine.press.Clamps;
import punchwright.engine.press.Machine;

/**
 * Clamps and travel of each holding: the sheet is held, the clamps hold uncut metal, no hit at a clamp, none beyond travel
 * or throat. In a turned holding the sheet lies with its other long edge in the clamps; places are then those of the sheet
 * as it lies, (length - x, width - y).
 */
final class HoldingCheck {

    private static final double SLACK_MM = 1e-6;

    private final ProofJob job;
    private final Machine machine;
    private final Report report;

    HoldingCheck(ProofJob job, Report report) {
        this.job = job;
        this.machine = job.machine();
        this.report = report;
    }

    void holdings() {
        for (int h = 0; h < job.holdings().size(); h++) {
            int index = h;
            ClampArrangement c = job.holdings().get(h);
            long onSheet = c.clampCentersMm().stream().filter(this::onSheet).count();
            int needed = needed();
            if (onSheet < needed) {
                report.add(ProofReason.UNCLAMPED, null, "holding " + (h + 1), h + 1, onSheet, needed);
            }
            spacing(h, c.clampCentersMm().stream().sorted().toList());
            c.clampCentersMm().forEach(x -> onCarriage(index, x - c.reachFromMm()));
            if (c.reachToMm() - c.reachFromMm() > machine.travelXMm() + SLACK_MM) {
                report.add(ProofReason.WINDOW, null, "holding " + (h + 1), h + 1, c.reachToMm() - c.reachFromMm(),
                        machine.travelXMm());
            }
        }
    }

    /** Two clamps where the sheet is long enough for them and the machine has them. */
    private int needed() {
        Clamps k = machine.clamps();
        boolean two = k.count() >= 2 && job.sheetLengthMm() >= k.widthMm() + Math.max(k.minSpacingMm(), k.widthMm());
        return two ? 2 : 1;
    }

    /** The carriage's zero lies under the tool axis at the least reach. */
    private void onCarriage(int h, double fromZero) {
        Clamps k = machine.clamps();
        if (fromZero < k.minCenterMm() - SLACK_MM || fromZero > k.maxCenterMm() + SLACK_MM) {
            report.add(ProofReason.CLAMP_RANGE, null, "holding " + (h + 1), h + 1, fromZero, k.minCenterMm(), k.maxCenterMm());
        }
    }

    private boolean onSheet(double center) {
        double half = machine.clamps().widthMm() / 2;
        return center - half >= -SLACK_MM && center + half <= job.sheetLengthMm() + SLACK_MM;
    }

    private void spacing(int h, List<Double> centers) {
        double least = Math.max(machine.clamps().minSpacingMm(), machine.clamps().widthMm());
        for (int i = 1; i < centers.size(); i++) {
            double d = centers.get(i) - centers.get(i - 1);
            if (d < least - SLACK_MM) {
                report.add(ProofReason.CLAMP_SPACING, null, "holding " + (h + 1), h + 1, d, least);
            }
        }
    }

    /** Whether the hit's holding is there. */
    boolean hasHolding(Stroke s) {
        int h = s.hit().holding();
        if (h < 0 || h >= job.holdings().size()) {
            report.add(ProofReason.NO_HOLDING, s.at(), s.name(), s.hit().id(), h + 1, job.holdings().size());
            return false;
        }
        return true;
    }

    void order(List<Stroke> strokes) {
        for (int i = 1; i < strokes.size(); i++) {
            int before = strokes.get(i - 1).hit().holding();
            Stroke s = strokes.get(i);
            if (s.hit().holding() < before) {
                report.add(ProofReason.HOLDING_ORDER, s.at(), s.name(), s.hit().id(), s.hit().holding() + 1, before + 1);
            }
        }
    }

    void hit(Stroke s) {
        ClampArrangement c = job.holdings().get(s.hit().holding());
        double x = c.turned() ? job.sheetLengthMm() - s.x() : s.x();
        double y = c.turned() ? job.sheetWidthMm() - s.y() : s.y();
        if (x < c.reachFromMm() - SLACK_MM || x > c.reachToMm() + SLACK_MM) {
            report.add(ProofReason.TRAVEL_X, s.at(), s.name(), s.hit().id(), x, c.reachFromMm(), c.reachToMm());
        }
        if (y < -SLACK_MM || y > machine.travelYMm() + SLACK_MM) {
            report.add(ProofReason.TRAVEL_Y, s.at(), s.name(), s.hit().id(), y, machine.travelYMm());
        }
        if (y > machine.throatDepthMm() + SLACK_MM) {
            report.add(ProofReason.THROAT, s.at(), s.name(), s.hit().id(), y, machine.throatDepthMm());
        }
        clamps(s, c);
    }

    private void clamps(Stroke s, ClampArrangement c) {
        Clamps k = machine.clamps();
        for (double center : c.clampCentersMm()) {
            Envelope zone = new Envelope(clampBox(center, c.turned()));
            zone.expandBy(k.deadZoneMm() + 1);
            if (!zone.intersects(s.box())) {
                continue;
            }
            Geometry clamp = Punch.FACTORY.toGeometry(clampBox(center, c.turned()));
            double gap = s.areaAbout(0, 0).distance(clamp);
            if (gap < k.deadZoneMm() - 1e-3) {
                report.add(ProofReason.CLAMP, s.at(), s.name(), s.hit().id(), s.punch().tool().name(), gap, k.deadZoneMm());
            }
        }
    }

    /** A clamp on the sheet in sheet coordinates. */
    Envelope clampBox(double center, boolean turned) {
        Clamps k = machine.clamps();
        double x = turned ? job.sheetLengthMm() - center : center;
        double from = turned ? job.sheetWidthMm() - k.depthMm() : 0;
        return new Envelope(x - k.widthMm() / 2, x + k.widthMm() / 2, from, from + k.depthMm());
    }

    /** No clamp may hold where an earlier holding has cut. */
    void heldMetal(StrokeGrid grid) {
        for (int h = 0; h < job.holdings().size(); h++) {
            ClampArrangement c = job.holdings().get(h);
            for (double center : c.clampCentersMm()) {
                Envelope box = clampBox(center, c.turned());
                Geometry clamp = Punch.FACTORY.toGeometry(box);
                for (Stroke s : grid.near(box)) {
                    if (s.hit().holding() < h && s.areaAbout(0, 0).intersects(clamp)) {
                        report.add(ProofReason.CLAMP_ON_CUT, new Point(box.centre().x, box.centre().y), "holding " + (h + 1),
                                h + 1, center, s.hit().id());
                        break;
                    }
                }
            }
        }
    }
}
