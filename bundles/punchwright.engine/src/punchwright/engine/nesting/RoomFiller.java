// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

import punchwright.engine.geometry.Bounds;
import punchwright.engine.nesting.boxes.FreeSpace;
import punchwright.engine.nesting.boxes.Work;

/**
 * Puts optional pieces into room that filled sheets leave: first outside the rests that are worth keeping, then also into those
 * where the pieces are worth more. Fillers outside the rests need no value of their own.
 */
final class RoomFiller {

    private final Stock stock;
    private final List<BoxPart> parts;
    private final SpotCosts costs;
    private final FreeRests rests;
    private final BoxFiller filler;
    private final int[] left;

    /** @param wants the kinds of optional pieces to add */
    RoomFiller(Stock stock, List<BoxPart> parts, SpotCosts costs, Set<Want> wants, int[] made, Work work) {
        this.stock = stock;
        this.parts = parts;
        this.costs = costs;
        this.rests = new FreeRests(stock.costs().job());
        this.filler = new BoxFiller(parts, work);
        this.left = new int[parts.size()];
        for (int p = 0; p < left.length; p++) {
            NestPart part = parts.get(p).part();
            boolean wanted = wants.contains(part.want()) && (part.want() == Want.FILLER || costs.worth(p) > 0);
            left[p] = wanted ? Math.max(0, part.quantity() - made[p]) : 0;
        }
    }

    List<SpotSheet> filled(List<SpotSheet> sheets) {
        List<SpotSheet> out = new ArrayList<>();
        for (SpotSheet s : sheets) {
            int runs = s.runs();
            while (runs > 0) {
                List<Spot> spots = more(s);
                int[] counts = counts(spots);
                int same = runs;
                for (int p = 0; p < left.length; p++) {
                    same = counts[p] > 0 ? Math.min(same, left[p] / counts[p]) : same;
                }
                for (int p = 0; p < left.length; p++) {
                    left[p] -= same * counts[p];
                }
                List<Spot> all = new ArrayList<>(s.spots());
                all.addAll(spots);
                out.add(new SpotSheet(s.offer(), all, same));
                runs -= same;
            }
        }
        return out;
    }

    private int[] counts(List<Spot> spots) {
        int[] counts = new int[parts.size()];
        spots.forEach(s -> counts[s.part()]++);
        return counts;
    }

    /** Pieces to add to a sheet. */
    private List<Spot> more(SpotSheet s) {
        if (IntStream.of(left).allMatch(n -> n == 0)) {
            return List.of();
        }
        boolean keeps = stock.costs().job().costs().remnantShare() > 0;
        List<Bounds> kept = keeps ? rests.of(stock.offer(s.offer()), costs.boxes(s)) : List.of();
        List<Spot> outside = cheapest(s, List.of(), kept, true);
        List<Spot> inside = kept.isEmpty() ? List.of() : cheapest(s, outside, List.of(), false);
        List<Spot> all = new ArrayList<>(outside);
        all.addAll(inside);
        return all;
    }

    /** The fill under the fit rules that costs least; without fillers of no value where those must pay. */
    private List<Spot> cheapest(SpotSheet sheet, List<Spot> added, List<Bounds> kept, boolean free) {
        List<Spot> present = new ArrayList<>(sheet.spots());
        present.addAll(added);
        int[] most = left.clone();
        added.forEach(s -> most[s.part()]--);
        for (int p = 0; p < most.length; p++) {
            boolean may = free && parts.get(p).part().want() == Want.FILLER || costs.worth(p) > 0;
            most[p] = may ? most[p] : 0;
        }
        List<Spot> best = List.of();
        double least = free ? Double.POSITIVE_INFINITY : costs.net(List.of(new SpotSheet(sheet.offer(), present, 1)));
        for (FitRule rule : FitRule.values()) {
            List<Spot> spots = fill(sheet.offer(), present, kept, most, rule);
            List<Spot> all = new ArrayList<>(present);
            all.addAll(spots);
            double area = spots.stream().mapToDouble(s -> parts.get(s.part()).areaMm2()).sum();
            double net = free ? -area : costs.net(List.of(new SpotSheet(sheet.offer(), all, 1)));
            if (net < least - 1e-9) {
                best = spots;
                least = net;
            }
        }
        return best;
    }

    private List<Spot> fill(int offer, List<Spot> present, List<Bounds> kept, int[] most, FitRule rule) {
        Region region = stock.region(offer);
        int web = filler.web();
        FreeSpace free = new FreeSpace().reset(region.length() + web, region.width() + web);
        present.forEach(s -> use(free, region, costs.box(s), web));
        kept.forEach(b -> use(free, region, b, Math.max(web, Ticks.of(rests.gapMm()))));
        int[] order = IntStream.range(0, parts.size()).filter(p -> most[p] > 0).boxed()
                .sorted(Comparator.comparingLong((Integer p) -> -parts.get(p).boxArea())).mapToInt(Integer::intValue).toArray();
        return filler.fill(free, region.row(), most, order, rule).stream().map(b -> Spot.of(b, parts.get(b.part()), region))
                .toList();
    }

    /** Takes a box and a web around it; boxes are half a tick off at most. */
    private static void use(FreeSpace free, Region region, Bounds b, int web) {
        int x = (int) Math.floor((b.minX() - region.xMm()) * Ticks.PER_MM) - web;
        int y = region.row() ? 0 : (int) Math.floor((b.minY() - region.yMm()) * Ticks.PER_MM) - web;
        int toX = (int) Math.ceil((b.maxX() - region.xMm()) * Ticks.PER_MM) + web;
        int toY = region.row() ? region.width() + web : (int) Math.ceil((b.maxY() - region.yMm()) * Ticks.PER_MM) + web;
        free.use(x, y, toX - x, toY - y);
    }
}
