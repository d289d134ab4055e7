// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.contour;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

import punchwright.engine.geometry.Bounds;
import punchwright.engine.geometry.BoxIndex;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.InsideTest;
import punchwright.engine.geometry.InteriorPoint;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Shape;

/** Which loop lies in which: even depths are outlines of parts, odd depths their holes. */
public final class LoopNesting {

    private static final double CHORD_ERROR = 0.01;

    private final List<Contour> loops;
    private final List<Bounds> boxes;
    private final double[] areas;
    private final InsideTest[] tests;
    private final int[] depth;
    private final int[] parent;

    public LoopNesting(List<Contour> loops) {
        this.loops = loops;
        boxes = loops.stream().map(Contour::bounds).toList();
        areas = loops.stream().mapToDouble(Contour::areaMm2).toArray();
        tests = new InsideTest[loops.size()];
        depth = new int[loops.size()];
        parent = new int[loops.size()];
        Arrays.fill(parent, -1);
        BoxIndex index = new BoxIndex(boxes);
        for (int i = 0; i < loops.size(); i++) {
            locate(i, index);
        }
    }

    private void locate(int i, BoxIndex index) {
        Point p = InteriorPoint.of(loops.get(i));
        index.query(Bounds.EMPTY.including(p), j -> {
            boolean larger = areas[j] > areas[i] || areas[j] == areas[i] && j < i;
            if (j != i && larger && contains(j, p)) {
                depth[i]++;
                if (parent[i] < 0 || areas[j] < areas[parent[i]]) {
                    parent[i] = j;
                }
            }
        });
    }

    private boolean contains(int j, Point p) {
        if (tests[j] == null) {
            tests[j] = new InsideTest(loops.get(j), CHORD_ERROR);
        }
        return tests[j].contains(p);
    }

    /** How many loops hold this one. */
    public int depth(int loop) {
        return depth[loop];
    }

    /** The smallest loop that holds this one; -1 for none. */
    public int parent(int loop) {
        return parent[loop];
    }

    /** Sum of the areas of even depth less those of odd depth, in mm2. */
    public double netAreaMm2() {
        return IntStream.range(0, areas.length).mapToDouble(i -> depth[i] % 2 == 0 ? areas[i] : -areas[i]).sum();
    }

    /** Part shapes, larger ones first; equal ones in the order of the drawing. */
    public List<Shape> shapes() {
        List<List<Contour>> holes = new ArrayList<>();
        loops.forEach(l -> holes.add(new ArrayList<>()));
        for (int i = 0; i < loops.size(); i++) {
            if (depth[i] % 2 == 1) {
                holes.get(parent[i]).add(loops.get(i));
            }
        }
        return IntStream.range(0, loops.size()).filter(i -> depth[i] % 2 == 0).boxed()
                .sorted(Comparator.comparingDouble(i -> -areas[i])).map(i -> new Shape(loops.get(i), holes.get(i))).toList();
    }
}
