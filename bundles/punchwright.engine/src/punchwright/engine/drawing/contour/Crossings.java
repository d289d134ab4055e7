// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.contour;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntConsumer;

import punchwright.engine.finding.FindingCollector;
import punchwright.engine.geometry.Arc;
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
    /** Contours with fewer segments are compared segment by segment. */
    private static final int FEW = 12;

    private final double toleranceMm;
    private final FindingCollector findings;
    private final List<Contour> loops;
    private final List<Bounds> boxes;
    private final Map<Integer, BoxIndex> indexes = new HashMap<>();
    private boolean crossed;

    /** @param boxes bounds of the loops, in their order */
    Crossings(List<Contour> loops, List<Bounds> boxes, double toleranceMm, FindingCollector findings) {
        this.loops = loops;
        this.boxes = boxes;
        this.toleranceMm = toleranceMm;
        this.findings = findings;
    }

    void report(BoxIndex index) {
        for (int i = 0; i < loops.size(); i++) {
            int first = i;
            compare(first, first);
            index.query(boxes.get(i), second -> {
                boolean smallerAsks = size(first) < size(second) || size(first) == size(second) && first < second;
                if (first != second && smallerAsks) {
                    compare(first, second);
                }
            });
        }
    }

    private int size(int loop) {
        return loops.get(loop).segments().size();
    }

    /** Compares the segments of a loop with those of another at least as long, or with its own. */
    private void compare(int a, int b) {
        crossed = false;
        List<Segment> own = loops.get(a).segments();
        if (a == b && own.size() < 4) {
            return;
        }
        for (int i = 0; i < own.size() && !crossed; i++) {
            int position = i;
            int from = a == b ? i + 2 : 0;
            Bounds box = own.size() == 1 ? boxes.get(a) : own.get(i).bounds();
            if (from < size(b) && (a == b || box.intersects(boxes.get(b)))) {
                candidates(b, from, box, j -> compare(a, position, b, j));
            }
        }
    }

    private void candidates(int loop, int from, Bounds box, IntConsumer found) {
        List<Segment> segments = loops.get(loop).segments();
        if (segments.size() > FEW) {
            indexes.computeIfAbsent(loop, l -> new BoxIndex(segments.stream().map(Segment::bounds).toList())).query(box, found);
            return;
        }
        for (int j = from; j < segments.size(); j++) {
            if (segments.size() == 1 || segments.get(j).bounds().intersects(box)) {
                found.accept(j);
            }
        }
    }

    private void compare(int a, int i, int b, int j) {
        int n = size(a);
        if (crossed || a == b && (j <= i + 1 || j - i == n - 1)) {
            return;
        }
        Segment s = loops.get(a).segments().get(i);
        Segment t = loops.get(b).segments().get(j);
        for (Point p : Intersections.of(s, t, toleranceMm / 2)) {
            boolean crossing = isCrossing(s, t, p);
            if (crossing || a != b) {
                crossed |= crossing;
                findings.addAt(p, a == b ? ContourReason.SELF_CROSSING : crossing ? ContourReason.CROSSING : ContourReason.TOUCHING,
                        p.x(), p.y());
            }
        }
    }

    private boolean isCrossing(Segment s, Segment t, Point p) {
        double clear = 2 * toleranceMm;
        boolean atEnd = p.distance(s.start()) < clear || p.distance(s.end()) < clear || p.distance(t.start()) < clear
                || p.distance(t.end()) < clear;
        boolean closedCircle = s.start().distance(s.end()) < clear || t.start().distance(t.end()) < clear;
        return (!atEnd || closedCircle) && Math.abs(direction(s, p).cross(direction(t, p))) > TANGENT;
    }

    private static Point direction(Segment s, Point p) {
        return s instanceof Arc arc ? p.minus(arc.center()).unit().left() : s.tangentAt(0);
    }
}
