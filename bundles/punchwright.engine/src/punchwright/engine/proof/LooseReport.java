// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.proof;

import punchwright.engine.geometry.Point;

/** Says what is wrong with the size of a loose piece of waste. */
final class LooseReport {

    private LooseReport() {
    }

    static void add(Report report, ProofJob job, RingResult.Loose piece, Point at, String subject) {
        double least = Math.max(job.thicknessMm(), 1);
        if (piece.longerMm() > job.machine().dropOpeningMm()) {
            report.add(ProofReason.SLUG_LARGE, at, subject, piece.longerMm(), job.machine().dropOpeningMm());
        } else if (piece.shorterMm() < least) {
            report.add(ProofReason.SLIVER, at, subject, piece.shorterMm(), least);
        }
    }
}
