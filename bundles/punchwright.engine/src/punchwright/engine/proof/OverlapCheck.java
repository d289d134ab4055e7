// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.proof;

import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;

import punchwright.engine.geometry.Point;

/** No two parts share metal; a part may lie in another's opening. */
final class OverlapCheck {

    private final Rings rings;
    private final Report report;

    OverlapCheck(Rings rings, Report report) {
        this.rings = rings;
        this.report = report;
    }

    void run() {
        for (Ring a : rings.outlines()) {
            Envelope box = new Envelope(a.form().polygon().getEnvelopeInternal());
            box.translate(a.anchorX(), a.anchorY());
            for (Ring b : rings.near(box)) {
                if (!b.form().opening() && b.part() > a.part()) {
                    look(a, b);
                }
            }
        }
    }

    private void look(Ring a, Ring b) {
        Geometry other = AffineTransformation.translationInstance(b.anchorX() - a.anchorX(), b.anchorY() - a.anchorY())
                .transform(b.form().polygon().buffer(-0.01));
        if (other.isEmpty() || !a.form().polygon().intersects(other) || inOpening(a, b) || inOpening(b, a)) {
            return;
        }
        Point at = new Point(b.anchorX(), b.anchorY());
        report.add(ProofReason.PARTS_OVERLAP, at, "part " + (b.part() + 1), a.part() + 1, b.part() + 1);
    }

    /** Whether b lies wholly in one of a's openings. */
    private boolean inOpening(Ring a, Ring b) {
        for (Ring hole : rings.near(b.box(0))) {
            if (hole.form().opening() && hole.part() == a.part()) {
                Geometry inner = AffineTransformation
                        .translationInstance(b.anchorX() - hole.anchorX(), b.anchorY() - hole.anchorY())
                        .transform(b.form().polygon());
                if (hole.form().polygon().covers(inner)) {
                    return true;
                }
            }
        }
        return false;
    }
}
