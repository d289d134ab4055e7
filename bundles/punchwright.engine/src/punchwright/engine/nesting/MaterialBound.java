// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

import punchwright.engine.geometry.Bounds;

/**
 * A lower bound on the sheet area for an order, whatever the layout.
 *
 * <p>Parts that keep a web g stay disjoint when each is grown by g/2 on all sides, and the grown parts lie in the usable
 * region grown by g/2. A part of area A grown by r covers at least (sqrt(A) + r sqrt(pi))^2 (Brunn-Minkowski inequality);
 * a rectangle without holes covers A + P r + pi r^2 with its perimeter P (Steiner formula). The bound is the least area of
 * whole sheets whose grown regions together cover the grown parts, quantities on hand left aside.
 */
final class MaterialBound {

    private static final int NODE_LIMIT = 200_000;

    private final double[] room;
    private final double[] area;
    private int nodes;
    private double best;

    MaterialBound(Stock stock, List<BoxPart> parts) {
        double r = parts.stream().mapToDouble(p -> p.part().webMm()).max().orElse(0) / 2;
        int[] byRatio = IntStream.range(0, stock.size()).boxed()
                .sorted(Comparator.comparingDouble(i -> stock.areaMm2(i) / grownRegion(stock.region(i), r)))
                .mapToInt(Integer::intValue).toArray();
        room = IntStream.of(byRatio).mapToDouble(i -> grownRegion(stock.region(i), r)).toArray();
        area = IntStream.of(byRatio).mapToDouble(stock::areaMm2).toArray();
    }

    private static double grownRegion(Region region, double r) {
        double l = Ticks.mm(region.length());
        double w = Ticks.mm(region.width());
        return l * w + 2 * r * (l + w) + Math.PI * r * r;
    }

    /** Area that one part takes at least, with its half webs, in mm2. */
    static double grownPart(BoxPart box) {
        double r = box.part().webMm() / 2;
        double a = box.areaMm2();
        Bounds b = box.part().shape().bounds();
        boolean rectangle = box.part().shape().holes().isEmpty() && Math.abs(b.width() * b.height() - a) <= 1e-9 * a;
        double side = Math.sqrt(a) + r * Math.sqrt(Math.PI);
        return rectangle ? a + 2 * r * (b.width() + b.height()) + Math.PI * r * r : side * side;
    }

    /** Least area in mm2 of whole sheets for the given grown part area. */
    double sheetAreaMm2(double grownPartsMm2) {
        if (room.length == 0 || grownPartsMm2 <= 0) {
            return 0;
        }
        best = IntStream.range(0, room.length).mapToDouble(i -> Math.ceil(grownPartsMm2 / room[i] - 1e-9) * area[i]).min()
                .orElseThrow();
        nodes = 0;
        search(0, grownPartsMm2, 0);
        return nodes < NODE_LIMIT ? best : grownPartsMm2 * area[0] / room[0];
    }

    /** Branches on the number of sheets of the best ratio first; the fractional cover of the rest bounds each branch. */
    private void search(int i, double need, double used) {
        if (need <= 1e-9 * room[0]) {
            best = Math.min(best, used);
        } else if (i < room.length && nodes++ < NODE_LIMIT && used + need * area[i] / room[i] < best - 1e-9 * best) {
            for (int n = (int) Math.ceil(need / room[i] - 1e-9); n >= 0; n--) {
                search(i + 1, need - n * room[i], used + n * area[i]);
            }
        }
    }
}
