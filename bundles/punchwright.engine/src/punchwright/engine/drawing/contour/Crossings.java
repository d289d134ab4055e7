// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.contour;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;

import punchwright.engine.finding.FindingCollector;
import punchwright.engine.geometry.Bounds;
import punchwright.engine.geometry.BoxIndex;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Segment;

/**
 * Finds where contours cross themselves or each other, and where they only touch. The contours are looked at on all
 * processors; the findings come in the order of the contours.
 */
final class Crossings {

    private static final int SPENT_AT_ONCE = 1000;
    private static final long MOST_COMPARISONS = 5_000_000;
    /** Contours with fewer segments are compared segment by segment. */
    private static final int FEW = 12;

    private final double toleranceMm;
    private final List<Contour> loops;
    private final List<Bounds> boxes;
    private final WorkLimit limit = new WorkLimit(MOST_COMPARISONS);
    private final Map<Integer, BoxIndex> indexes = new ConcurrentHashMap<>();

    /** @param boxes bounds of the loops, in their order */
    Crossings(List<Contour> loops, List<Bounds> boxes, double toleranceMm) {
        this.loops = loops;
        this.boxes = boxes;
        this.toleranceMm = toleranceMm;
    }

    /** @param index of the boxes */
    void report(BoxIndex index, FindingCollector findings) {
        Map<Integer, List<Meeting>> all = new ConcurrentSkipListMap<>();
        IntStream.range(0, index.groups()).parallel()
                .forEach(g -> index.neighbours(g, limit::isSpent, (i, others, n) -> lookAt(i, others, n, all)));
        if (limit.isSpent()) {
            findings.add(ContourReason.TANGLED, 0);
            return;
        }
        for (List<Meeting> meetings : all.values()) {
            meetings.forEach(m -> findings.addAt(m.place(), m.reason(), m.place().x(), m.place().y()));
        }
    }

    /** Meetings of a loop with itself and with loops of as many segments or more. */
    private void lookAt(int first, int[] others, int n, Map<Integer, List<Meeting>> all) {
        List<Meeting> found = new ArrayList<>(0);
        compare(first, first, found);
        for (int k = 0; k < n; k++) {
            int second = others[k];
            boolean smallerAsks = size(first) < size(second) || size(first) == size(second) && first < second;
            if (first != second && smallerAsks) {
                compareWithOther(first, second, found);
            }
        }
        if (!found.isEmpty()) {
            all.put(first, found);
        }
    }

    /** Most loops lie clear of the lines of the other: then one look at each of those lines is enough. */
    private void compareWithOther(int a, int b, List<Meeting> found) {
        boolean[] near = {false};
        candidates(b, 0, boxes.get(a), j -> near[0] = true);
        if (near[0]) {
            compare(a, b, found);
        } else {
            limit.spend(size(a));
        }
    }

    private int size(int loop) {
        return loops.get(loop).segments().size();
    }

    private void compare(int a, int b, List<Meeting> found) {
        List<Segment> own = loops.get(a).segments();
        if (a == b && own.size() < 4) {
            return;
        }
        int before = found.size();
        int[] steps = {0};
        for (int i = 0; i < own.size() && !limit.isSpent(); i++) {
            int position = i;
            int from = a == b ? i + 2 : 0;
            Bounds box = own.size() == 1 ? boxes.get(a) : own.get(i).bounds();
            if (from < size(b) && (a == b || box.intersects(boxes.get(b)))) {
                candidates(b, from, box, j -> {
                    steps[0]++;
                    compare(a, position, b, j, before, found);
                });
            }
            spend(steps, i + 1 == own.size() ? 1 : SPENT_AT_ONCE);
        }
    }

    /** Counts work in larger portions, so that threads do not wait for each other. */
    private void spend(int[] steps, int portion) {
        steps[0]++;
        if (steps[0] >= portion) {
            limit.spend(steps[0]);
            steps[0] = 0;
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

    /** After the first crossing of a pair no more is looked for. */
    private void compare(int a, int i, int b, int j, int before, List<Meeting> found) {
        boolean neighbours = a == b && (j <= i + 1 || j - i == size(a) - 1);
        boolean done = found.size() > before && found.get(found.size() - 1).reason() != ContourReason.TOUCHING;
        if (!neighbours && !done) {
            Meeting.of(loops.get(a).segments().get(i), loops.get(b).segments().get(j), a == b, toleranceMm, found);
        }
    }
}
