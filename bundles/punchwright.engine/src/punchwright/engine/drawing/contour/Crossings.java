// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.contour;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import punchwright.engine.finding.FindingCollector;
import punchwright.engine.geometry.Bounds;
import punchwright.engine.geometry.BoxIndex;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Intersections;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Segment;

/** Finds where contours cross themselves or each other, and where they only touch. */
final class Crossings {

    /** Sine of the angle below which two curves touch instead of cross. */
    private static final double TANGENT = 0.05;

    private final double toleranceMm;
    private final FindingCollector findings;
    private final List<Segment> segments = new ArrayList<>();
    private final List<Integer> owner = new ArrayList<>();
    private final List<Integer> positionInLoop = new ArrayList<>();
    private final List<Contour> loops;
    private final Set<Long> reported = new HashSet<>();

    Crossings(List<Contour> loops, double toleranceMm, FindingCollector findings) {
        this.loops = loops;
        this.toleranceMm = toleranceMm;
        this.findings = findings;
    }

    void report() {
        List<Bounds> boxes = new ArrayList<>();
        for (int i = 0; i < loops.size(); i++) {
            List<Segment> own = loops.get(i).segments();
            for (int k = 0; k < own.size(); k++) {
                segments.add(own.get(k));
                owner.add(i);
                positionInLoop.add(k);
                boxes.add(own.get(k).bounds());
            }
        }
        BoxIndex index = new BoxIndex(boxes);
        for (int i = 0; i < segments.size(); i++) {
            int first = i;
            index.query(boxes.get(i), second -> {
                if (second > first && !areNeighbours(first, second)) {
                    compare(first, second);
                }
            });
        }
    }

    private boolean areNeighbours(int i, int j) {
        int n = loops.get(owner.get(i)).segments().size();
        int step = Math.abs(positionInLoop.get(i) - positionInLoop.get(j));
        return owner.get(i).equals(owner.get(j)) && (step <= 1 || step == n - 1);
    }

    private void compare(int i, int j) {
        int a = owner.get(i);
        int b = owner.get(j);
        if (reported.contains(key(a, b))) {
            return;
        }
        for (Point p : Intersections.of(segments.get(i), segments.get(j), toleranceMm / 2)) {
            boolean crossing = isCrossing(segments.get(i), segments.get(j), p);
            if (crossing || a != b) {
                note(a, b, p, crossing);
            }
        }
    }

    private static long key(int a, int b) {
        return (long) Math.min(a, b) << 32 | Math.max(a, b);
    }

    private void note(int a, int b, Point p, boolean crossing) {
        ContourReason reason = a == b ? ContourReason.SELF_CROSSING : crossing ? ContourReason.CROSSING : ContourReason.TOUCHING;
        if (crossing) {
            reported.add(key(a, b));
        }
        findings.addAt(p, reason, p.x(), p.y());
    }

    private boolean isCrossing(Segment s, Segment t, Point p) {
        double clear = 2 * toleranceMm;
        boolean atEnd = p.distance(s.start()) < clear || p.distance(s.end()) < clear || p.distance(t.start()) < clear
                || p.distance(t.end()) < clear;
        boolean closedCircle = s.start().distance(s.end()) < clear || t.start().distance(t.end()) < clear;
        return (!atEnd || closedCircle) && Math.abs(direction(s, p).cross(direction(t, p))) > TANGENT;
    }

    private static Point direction(Segment s, Point p) {
        return s instanceof punchwright.engine.geometry.Arc arc ? p.minus(arc.center()).unit().left() : s.tangentAt(0);
    }
}
