// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.proof;

import org.locationtech.jts.geom.Envelope;

import punchwright.engine.geometry.Point;
import punchwright.engine.press.Machine;

/** Whether the machine takes the sheet, and whether all parts and hits lie on it. */
final class SheetCheck {

    private final ProofJob job;
    private final Report report;

    SheetCheck(ProofJob job, Report report) {
        this.job = job;
        this.report = report;
    }

    void limits() {
        Machine m = job.machine();
        double t = job.thicknessMm();
        if (t < m.minThicknessMm() - 1e-9 || t > m.maxThicknessMm() + 1e-9) {
            report.add(ProofReason.THICKNESS, null, "machine " + m.name(), t, m.minThicknessMm(), m.maxThicknessMm());
        }
        double massKg = job.sheetLengthMm() * job.sheetWidthMm() * t * job.material().densityKgPerDm3() / 1e6;
        if (massKg > m.maxSheetMassKg() + 1e-9) {
            report.add(ProofReason.MASS, null, "sheet", massKg, m.maxSheetMassKg());
        }
        if (job.sheetLengthMm() > m.longestSheetMm() + 1e-9) {
            report.add(ProofReason.SHEET_LENGTH, null, "sheet", job.sheetLengthMm(), m.longestSheetMm());
        }
    }

    void parts(Rings rings) {
        for (Ring r : rings.outlines()) {
            Envelope b = new Envelope(r.form().polygon().getEnvelopeInternal());
            b.translate(r.anchorX(), r.anchorY());
            double over = Math.max(Math.max(-b.getMinX(), -b.getMinY()),
                    Math.max(b.getMaxX() - job.sheetLengthMm(), b.getMaxY() - job.sheetWidthMm()));
            if (over > job.toleranceMm()) {
                report.add(ProofReason.PART_OFF_SHEET, new Point(b.centre().x, b.centre().y), "part " + (r.part() + 1),
                        r.part() + 1, over);
            }
        }
    }

    void hit(Stroke s) {
        Envelope sheet = new Envelope(0, job.sheetLengthMm(), 0, job.sheetWidthMm());
        if (!s.box().intersects(sheet)) {
            report.add(ProofReason.OFF_SHEET, s.at(), s.name(), s.hit().id());
        }
    }
}
