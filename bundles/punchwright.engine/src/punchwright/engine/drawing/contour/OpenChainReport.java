// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.contour;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

import punchwright.engine.finding.FindingCollector;
import punchwright.engine.geometry.Bounds;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.InsideTest;
import punchwright.engine.geometry.InteriorPoint;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Segment;

/** Says of each open chain where it is open, and whether it is an outline that failed to close. */
final class OpenChainReport {

    /** A gap below this share of the chain's length counts as a failed outline, not as a loose line. */
    private static final double SMALL_GAP = 0.2;
    /** Chains that are tried as outlines, so that a drawing of loose lines stays quick. */
    private static final int MOST_TRIED = 200;

    private record OpenOutline(Bounds box, InsideTest test) {
    }

    private final List<Contour> loops;
    private final FindingCollector findings;
    private final List<OpenOutline> outlines = new ArrayList<>();
    /** Worked out once a loop, however many chains ask. */
    private final Map<Contour, Bounds> boxes = new IdentityHashMap<>();
    private final Map<Contour, Point> inner = new IdentityHashMap<>();
    private int tried;

    OpenChainReport(List<Contour> loops, FindingCollector findings) {
        this.loops = loops;
        this.findings = findings;
    }

    void report(List<Segment> chain) {
        Point start = chain.get(0).start();
        double gap = start.distance(chain.get(chain.size() - 1).end());
        double length = chain.stream().mapToDouble(Segment::lengthMm).sum();
        long inside = gap < SMALL_GAP * length && tried++ < MOST_TRIED ? loopsInside(new Contour(chain)) : 0;
        if (inside > 0) {
            findings.addAt(start, ContourReason.OPEN_OUTLINE, start.x(), start.y(), gap, inside);
        } else {
            findings.addAt(start, ContourReason.OPEN_CHAIN, start.x(), start.y(), gap, length);
        }
    }

    private long loopsInside(Contour chain) {
        OpenOutline outline = new OpenOutline(chain.bounds(), new InsideTest(chain, 0.01));
        long inside = loops.stream().filter(l -> holds(outline, l)).count();
        if (inside > 0) {
            outlines.add(outline);
        }
        return inside;
    }

    private boolean holds(OpenOutline outline, Contour loop) {
        return outline.box().contains(boxes.computeIfAbsent(loop, Contour::bounds))
                && outline.test().contains(inner.computeIfAbsent(loop, InteriorPoint::of));
    }

    boolean liesInOpenOutline(Contour loop) {
        return outlines.stream().anyMatch(o -> holds(o, loop));
    }
}
