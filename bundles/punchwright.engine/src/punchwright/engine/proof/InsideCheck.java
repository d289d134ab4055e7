// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.proof;

import java.util.List;
import java.util.Set;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

import punchwright.engine.geometry.Point;

/** Strokes that lie in a part without crossing any of its edges, which the look at the edges cannot see. */
final class InsideCheck {

    private final ProofJob job;
    private final Rings rings;
    private final Report report;

    InsideCheck(ProofJob job, Rings rings, Report report) {
        this.job = job;
        this.rings = rings;
        this.report = report;
    }

    /** @param known  turns of strokes whose entering is reported already */
    void run(List<Stroke> strokes, Set<Integer> known) {
        for (Stroke s : strokes) {
            if (s.cuts() && !known.contains(s.turn())) {
                look(s);
            }
        }
    }

    private void look(Stroke s) {
        for (Coordinate c : s.punch().inner()) {
            Point at = new Point(c.x + s.x(), c.y + s.y());
            int part = rings.partAt(at.x(), at.y());
            if (part >= 0) {
                Envelope box = s.punch().box();
                report.add(ProofReason.GOUGE, at, s.name(), s.hit().id(), s.punch().tool().name(),
                        Math.min(box.getWidth(), box.getHeight()), job.toleranceMm(), part + 1);
                return;
            }
        }
    }
}
