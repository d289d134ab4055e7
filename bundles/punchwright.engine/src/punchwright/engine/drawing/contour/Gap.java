// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.contour;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import punchwright.engine.finding.FindingCollector;
import punchwright.engine.geometry.Point;

/** Two end points that were taken as one. */
record Gap(Point place, double widthMm) {

    /** The widest as a finding of its own; where there are several, a note for each, wide ones first. */
    static void report(List<Gap> gaps, FindingCollector findings) {
        if (gaps.isEmpty()) {
            return;
        }
        List<Gap> falling = new ArrayList<>(gaps);
        falling.sort(Comparator.comparingDouble(Gap::widthMm).reversed());
        findings.addAt(falling.get(0).place, ContourReason.GAPS_CLOSED, falling.get(0).widthMm, gaps.size());
        if (gaps.size() > 1) {
            falling.forEach(g -> findings.addAt(g.place, ContourReason.GAP_CLOSED, g.place.x(), g.place.y(), g.widthMm));
        }
    }
}
