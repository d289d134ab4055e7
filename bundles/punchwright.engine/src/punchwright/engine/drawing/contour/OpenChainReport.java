// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.contour;

import java.util.List;

import punchwright.engine.finding.FindingCollector;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.InsideTest;
import punchwright.engine.geometry.InteriorPoint;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Segment;

/** Says of each open chain where it is open, and whether it is an outline that failed to close. */
final class OpenChainReport {

    /** A gap below this share of the chain's length counts as a failed outline, not as a loose line. */
    private static final double SMALL_GAP = 0.2;

    private final List<Contour> loops;
    private final FindingCollector findings;
    private int checksLeft = 200;

    OpenChainReport(List<Contour> loops, FindingCollector findings) {
        this.loops = loops;
        this.findings = findings;
    }

    /** True when the chain is an open outline around loops. */
    boolean report(List<Segment> chain) {
        Point start = chain.get(0).start();
        Point end = chain.get(chain.size() - 1).end();
        double length = chain.stream().mapToDouble(Segment::lengthMm).sum();
        double gap = start.distance(end);
        long inside = gap < SMALL_GAP * length && checksLeft-- > 0 ? loopsInside(chain) : 0;
        if (inside > 0) {
            findings.addAt(start, ContourReason.OPEN_OUTLINE, start.x(), start.y(), gap, inside);
        } else {
            findings.addAt(start, ContourReason.OPEN_CHAIN, start.x(), start.y(), gap, length);
        }
        return inside > 0;
    }

    private long loopsInside(List<Segment> chain) {
        Contour closed = new Contour(chain);
        return loops.stream().filter(l -> holds(closed, l)).count();
    }

    /** Whether a chain, thought closed, holds a loop. */
    static boolean holds(Contour chain, Contour loop) {
        return chain.bounds().contains(loop.bounds()) && new InsideTest(chain, 0.01).contains(InteriorPoint.of(loop));
    }
}
