// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.contour;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import punchwright.engine.geometry.Bounds;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Point;

/** Keeps one of several loops that lie on each other, however each is drawn. */
final class LoopCleaning {

    /** Segments of which the middle is compared; boxes, areas and lengths have been compared before. */
    private static final int MIDDLES = 8;

    /** Loops about one centre and of one size that are compared with each other. */
    private static final int MOST_COMPARED = 200;

    private final double toleranceMm;
    private final List<Point> dropped = new ArrayList<>();
    private final Set<PieceKey> droppedKeys = new HashSet<>();
    private double otherwiseDrawnMm;

    LoopCleaning(double toleranceMm) {
        this.toleranceMm = toleranceMm;
    }

    /** The loops without repeats in their order. */
    List<Loop> unique(List<Loop> loops) {
        Nodes centers = new Nodes(2 * toleranceMm, loops.size());
        List<Bounds> boxes = loops.stream().map(Loop::bounds).toList();
        boxes.forEach(b -> centers.add(b.center()));
        int[] members = centers.members();
        int[] sizes = sizes(boxes, centers, members);
        Map<Long, List<Integer>> keptAt = new LinkedHashMap<>();
        List<Loop> unique = new ArrayList<>(loops.size());
        for (int i = 0; i < loops.size(); i++) {
            if (members[centers.find(i)] == 1) {
                unique.add(loops.get(i));
                continue;
            }
            List<Integer> near = keptAt.computeIfAbsent((long) centers.find(i) << 32 | sizes[i], n -> new ArrayList<>(1));
            int candidate = i;
            if (near.stream().limit(MOST_COMPARED).anyMatch(j -> sameBox(boxes.get(candidate), boxes.get(j))
                    && same(loops.get(candidate).contour(), loops.get(j).contour()))) {
                drop(loops.get(i), near, loops);
            } else {
                near.add(i);
                unique.add(loops.get(i));
            }
        }
        return unique;
    }

    /** Loops of one size have one number; only those that share their centre with others are looked at. */
    private int[] sizes(List<Bounds> boxes, Nodes centers, int[] members) {
        int[] position = new int[boxes.size()];
        Nodes sizes = new Nodes(4 * toleranceMm);
        for (int i = 0; i < position.length; i++) {
            position[i] = members[centers.find(i)] == 1 ? -1 : sizes.add(new Point(boxes.get(i).width(), boxes.get(i).height()));
        }
        return Arrays.stream(position).map(p -> p < 0 ? 0 : sizes.find(p)).toArray();
    }

    private void drop(Loop loop, List<Integer> near, List<Loop> loops) {
        dropped.add(loop.contour().segments().get(0).pointAt(0.5));
        PieceKey key = loop.single() == null ? null : PieceKey.of(loop.single(), toleranceMm);
        boolean again = key != null && (!droppedKeys.add(key) || near.stream().map(j -> loops.get(j).single())
                .anyMatch(s -> s != null && PieceKey.of(s, toleranceMm).equals(key)));
        if (!again && !loop.doubtful()) {
            otherwiseDrawnMm += loop.contour().lengthMm();
        }
    }

    /** Length in mm of the loops dropped that are drawn in another way than the one kept. */
    double otherwiseDrawnMm() {
        return otherwiseDrawnMm;
    }

    private boolean sameBox(Bounds a, Bounds b) {
        return Math.abs(a.width() - b.width()) <= 4 * toleranceMm && Math.abs(a.height() - b.height()) <= 4 * toleranceMm;
    }

    private boolean same(Contour a, Contour b) {
        double e = 2 * toleranceMm;
        return Math.abs(a.areaMm2() - b.areaMm2()) <= e * a.lengthMm()
                && a.segments().stream().limit(MIDDLES).allMatch(s -> b.distance(s.pointAt(0.5)) <= e);
    }

    /** A place on each loop dropped. */
    List<Point> dropped() {
        return dropped;
    }
}
