// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.contour;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

import punchwright.engine.geometry.Bounds;
import punchwright.engine.geometry.BoxIndex;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Segment;

/** Finds loose pieces that lie on other curves for their whole length. */
final class Overlaps {

    private static final int SAMPLES = 8;
    private static final long MOST_COMPARISONS = 5_000_000;
    private static final double PARALLEL = 0.02;

    private final double toleranceMm;
    private final List<Segment> covers;
    private final List<Integer> owner = new ArrayList<>();
    private final BoxIndex index;
    private final boolean[] dropped;
    private final WorkLimit limit = new WorkLimit(MOST_COMPARISONS);

    /**
     * @param loose pieces that belong to no contour
     * @param loops contours that they may lie on
     */
    Overlaps(List<Segment> loops, List<Piece> loose, double toleranceMm) {
        this.toleranceMm = toleranceMm;
        covers = new ArrayList<>(loops);
        loops.forEach(s -> owner.add(-1));
        for (int i = 0; i < loose.size(); i++) {
            for (Segment s : loose.get(i).segments()) {
                covers.add(s);
                owner.add(i);
            }
        }
        index = new BoxIndex(covers.stream().map(Segment::bounds).toList());
        dropped = new boolean[loose.size()];
        IntStream.range(0, loose.size()).boxed().sorted(Comparator.comparingDouble(i -> loose.get(i).lengthMm()))
                .forEach(i -> dropped[i] = loose.get(i).segments().stream().allMatch(s -> isCovered(s, i)));
    }

    /** Whether there was too much to compare; then nothing is dropped. */
    boolean isTangled() {
        return limit.isSpent();
    }

    boolean isDropped(int loose) {
        return dropped[loose] && !limit.isSpent();
    }

    private boolean isCovered(Segment s, int own) {
        if (limit.isSpent()) {
            return false;
        }
        for (int i = 0; i <= SAMPLES; i++) {
            double t = (double) i / SAMPLES;
            if (!isCovered(s.pointAt(t), s.tangentAt(t), own)) {
                return false;
            }
        }
        return true;
    }

    private boolean isCovered(Point p, Point direction, int own) {
        boolean[] found = {false};
        int[] steps = {0};
        index.query(Bounds.EMPTY.including(p).grown(toleranceMm), j -> {
            steps[0]++;
            if (!found[0] && owner.get(j) != own && (owner.get(j) < 0 || !dropped[owner.get(j)])) {
                Segment cover = covers.get(j);
                found[0] = cover.distance(p) <= toleranceMm
                        && Math.abs(cover.tangentAt(cover.shareNearest(p)).cross(direction)) < PARALLEL;
            }
        });
        limit.spend(1 + steps[0]);
        return found[0];
    }
}
