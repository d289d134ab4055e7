// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.contour;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.stream.IntStream;

import punchwright.engine.geometry.Bounds;
import punchwright.engine.geometry.BoxIndex;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.InsideTest;
import punchwright.engine.geometry.InteriorPoint;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Shape;

/** Which loop lies in which: even depths are outlines of parts, odd depths their holes. */
final class LoopNesting {

    private static final long MOST_COMPARISONS = 20_000_000;
    private static final long WORK_PER_CORNER = 4;
    private static final double CHORD_ERROR = 0.01;

    private final List<Contour> loops;
    private final List<Bounds> boxes;
    private final BoxIndex index;
    private final double[] areas;
    private final AtomicReferenceArray<InsideTest> tests;
    private final int[] depth;
    private final int[] parent;
    private final WorkLimit limit = new WorkLimit(MOST_COMPARISONS);

    LoopNesting(List<Loop> all) {
        loops = all.stream().map(Loop::contour).toList();
        boxes = all.stream().map(Loop::bounds).toList();
        areas = loops.parallelStream().mapToDouble(Contour::areaMm2).toArray();
        tests = new AtomicReferenceArray<>(loops.size());
        depth = new int[loops.size()];
        parent = new int[loops.size()];
        Arrays.fill(parent, -1);
        index = new BoxIndex(boxes);
        IntStream.range(0, index.groups()).parallel().forEach(g -> index.neighbours(g, limit::isSpent, this::locate));
        if (isTangled()) {
            Arrays.fill(depth, 0);
        }
    }

    /** Writes only its own places of the arrays, so that the order of the calls does not matter. */
    private void locate(int i, int[] others, int n) {
        Point inner = null;
        for (int k = 0; k < n; k++) {
            int j = others[k];
            if (j != i && isLarger(j, i)) {
                InsideTest test = test(j);
                boolean clear = test.isClearOf(boxes.get(i));
                inner = inner == null && !clear ? InteriorPoint.of(loops.get(i)) : inner;
                if (test.contains(clear ? boxes.get(i).center() : inner)) {
                    depth[i]++;
                    parent[i] = parent[i] < 0 || areas[j] < areas[parent[i]] ? j : parent[i];
                }
            }
        }
        limit.spend(n);
    }

    /** Whether there was too much to compare; then nothing is decided. */
    boolean isTangled() {
        return limit.isSpent();
    }

    private boolean isLarger(int j, int i) {
        return areas[j] > areas[i] || areas[j] == areas[i] && j < i;
    }

    private InsideTest test(int j) {
        InsideTest test = tests.get(j);
        if (test == null) {
            test = new InsideTest(loops.get(j), CHORD_ERROR);
            if (tests.compareAndSet(j, null, test)) {
                limit.spend(WORK_PER_CORNER * test.corners());
            }
        }
        return test;
    }

    List<Bounds> boxes() {
        return boxes;
    }

    BoxIndex index() {
        return index;
    }

    List<Contour> loops() {
        return loops;
    }

    /** Sum of the areas of even depth less those of odd depth, in mm2. */
    double netAreaMm2() {
        return IntStream.range(0, areas.length).mapToDouble(i -> depth[i] % 2 == 0 ? areas[i] : -areas[i]).sum();
    }

    /** Part shapes, larger ones first; equal ones in the order of the drawing; none when that is not decided. */
    List<Shape> shapes() {
        if (isTangled()) {
            return List.of();
        }
        List<List<Contour>> holes = new ArrayList<>(areas.length);
        loops.forEach(l -> holes.add(null));
        for (int i = 0; i < areas.length; i++) {
            if (depth[i] % 2 == 1) {
                if (holes.get(parent[i]) == null) {
                    holes.set(parent[i], new ArrayList<>());
                }
                holes.get(parent[i]).add(loops.get(i));
            }
        }
        return IntStream.range(0, areas.length).parallel().filter(i -> depth[i] % 2 == 0).boxed()
                .sorted(Comparator.comparingDouble(i -> -areas[i]))
                .map(i -> new Shape(loops.get(i), holes.get(i) == null ? List.of() : holes.get(i))).toList();
    }
}
