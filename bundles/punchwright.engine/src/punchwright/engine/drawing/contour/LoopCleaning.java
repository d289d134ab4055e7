// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.contour;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import punchwright.engine.geometry.Bounds;
import punchwright.engine.geometry.Contour;

/** Keeps one of several loops that lie on each other, however each is drawn. */
final class LoopCleaning {

    private final double toleranceMm;
    private int dropped;
    private int keptAfter;

    LoopCleaning(double toleranceMm) {
        this.toleranceMm = toleranceMm;
    }

    /** The loops without repeats in their order; counts those kept from position {@code mark} on. */
    List<Contour> unique(List<Contour> loops, int mark) {
        Nodes centers = new Nodes(2 * toleranceMm);
        List<Bounds> boxes = loops.stream().map(Contour::bounds).toList();
        boxes.forEach(b -> centers.add(b.center()));
        Map<Integer, List<Integer>> keptAt = new LinkedHashMap<>();
        List<Contour> unique = new ArrayList<>();
        for (int i = 0; i < loops.size(); i++) {
            List<Integer> near = keptAt.computeIfAbsent(centers.find(i), n -> new ArrayList<>());
            int candidate = i;
            if (near.stream().anyMatch(j -> same(loops.get(candidate), boxes.get(candidate), loops.get(j), boxes.get(j)))) {
                dropped++;
            } else {
                near.add(i);
                unique.add(loops.get(i));
                keptAfter += i >= mark ? 1 : 0;
            }
        }
        return unique;
    }

    private boolean same(Contour a, Bounds boxA, Contour b, Bounds boxB) {
        double e = 2 * toleranceMm;
        return Math.abs(boxA.width() - boxB.width()) <= 2 * e && Math.abs(boxA.height() - boxB.height()) <= 2 * e
                && Math.abs(a.areaMm2() - b.areaMm2()) <= e * a.lengthMm()
                && a.segments().stream().limit(8).allMatch(s -> b.distance(s.pointAt(0.5)) <= e);
    }

    int dropped() {
        return dropped;
    }

    int keptAfter() {
        return keptAfter;
    }
}
