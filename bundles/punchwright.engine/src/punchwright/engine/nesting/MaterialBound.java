// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import java.util.Comparator;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

import punchwright.engine.geometry.Bounds;

/**
 * A lower bound on what the sheets for an order weigh together, whatever the layout; the weight of a sheet is its area, or its
 * cost.
 *
 * <p>Parts that keep a web g stay disjoint when each is grown by g/2 on all sides, and the grown parts lie in the usable
 * region grown by g/2. A part whose outer contour holds the area A grown by r covers at least (sqrt(A) + r sqrt(pi))^2
 * (Brunn-Minkowski inequality); a rectangle covers A + P r + pi r^2 with its perimeter P (Steiner formula); any other outline
 * what its offset polygon covers, drawn inside the true one. The bound is the least weight of
 * whole sheets on hand whose grown regions together cover the grown parts.
 */
final class MaterialBound {

    private static final int NODE_LIMIT = 200_000;

    private final double[] room;
    private final double[] weight;
    private final int[] onHand;
    private int nodes;
    private double best;

    /** {@code weights} are 0 or more. */
    MaterialBound(Stock stock, List<BoxPart> parts, IntToDoubleFunction weights) {
        double r = parts.stream().mapToDouble(p -> p.part().webMm()).max().orElse(0) / 2;
        int[] byRatio = IntStream.range(0, stock.size()).boxed()
                .sorted(Comparator.comparingDouble(i -> weights.applyAsDouble(i) / room(stock, i, r)))
                .mapToInt(Integer::intValue).toArray();
        room = IntStream.of(byRatio).mapToDouble(i -> room(stock, i, r)).toArray();
        weight = IntStream.of(byRatio).mapToDouble(weights::applyAsDouble).toArray();
        onHand = IntStream.of(byRatio).map(i -> stock.offer(i).quantity()).toArray();
    }

    /** The region in which parts may lie, grown: with parts in the clamp strip, all of the sheet. */
    private static double room(Stock stock, int offer, double r) {
        Region region = stock.region(offer);
        boolean all = stock.costs().job().margins().clampZone() == ClampZone.NO_HIT;
        double l = all ? stock.offer(offer).lengthMm() : Ticks.mm(region.length());
        double w = all ? stock.offer(offer).widthMm() : Ticks.mm(region.width());
        return l * w + 2 * r * (l + w) + Math.PI * r * r;
    }

    /** Area that one part takes at least, with its half webs and its openings, in mm2, unless others may lie in those. */
    static double grownPart(BoxPart box) {
        double r = box.part().webMm() / 2;
        if (!box.part().openings().isEmpty()) {
            double own = Math.sqrt(box.areaMm2()) + r * Math.sqrt(Math.PI);
            return own * own;
        }
        double a = box.part().shape().outer().areaMm2();
        Bounds b = box.part().shape().bounds();
        if (isRectangle(box)) {
            return a + 2 * r * (b.width() + b.height()) + Math.PI * r * r;
        }
        double side = Math.sqrt(a) + r * Math.sqrt(Math.PI);
        return Math.max(side * side, GrownArea.atLeast(box.part().shape().outer(), r));
    }

    static boolean isRectangle(BoxPart box) {
        Bounds b = box.part().shape().bounds();
        return box.part().shape().holes().isEmpty() && Math.abs(b.width() * b.height() - box.areaMm2()) <= 1e-9 * box.areaMm2();
    }

    /** Least weight of whole sheets for the given grown part area; 0 where the stock does not hold it. */
    double of(double grownPartsMm2) {
        if (room.length == 0 || grownPartsMm2 <= 0) {
            return 0;
        }
        best = Double.POSITIVE_INFINITY;
        nodes = 0;
        search(0, grownPartsMm2, 0);
        double bound = nodes < NODE_LIMIT ? best : fractional(grownPartsMm2);
        return Double.isFinite(bound) ? bound : 0;
    }

    /** Branches on the number of sheets of the best ratio first; the fractional cover of the rest bounds each branch. */
    private void search(int i, double need, double used) {
        if (need <= 1e-9 * room[0]) {
            best = Math.min(best, used);
        } else if (i < room.length && nodes++ < NODE_LIMIT && used + need * weight[i] / room[i] < best * (1 - 1e-9)) {
            for (int n = (int) Math.min(onHand[i], Math.ceil(need / room[i] - 1e-9)); n >= 0; n--) {
                search(i + 1, need - n * room[i], used + n * weight[i]);
            }
        }
    }

    private double fractional(double need) {
        double left = need;
        double sum = 0;
        for (int i = 0; i < room.length && left > 0; i++) {
            double n = Math.min(onHand[i], left / room[i]);
            sum += n * weight[i];
            left -= n * room[i];
        }
        return sum;
    }
}
