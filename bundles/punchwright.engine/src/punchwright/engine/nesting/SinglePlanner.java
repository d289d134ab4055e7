// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import punchwright.engine.nesting.boxes.Work;

/** One part, any quantity: the block pattern of each offer and the cheapest mix of sheets. */
final class SinglePlanner {

    private static final Comparator<BoxPlacement> BY_X = Comparator.comparingInt(BoxPlacement::x)
            .thenComparingInt(BoxPlacement::y);
    private static final Comparator<BoxPlacement> BY_Y = Comparator.comparingInt(BoxPlacement::y)
            .thenComparingInt(BoxPlacement::x);

    private final Stock stock;
    private final List<BoxPart> parts;
    private final Work work;

    SinglePlanner(Stock stock, List<BoxPart> parts, Work work) {
        this.stock = stock;
        this.parts = parts;
        this.work = work;
    }

    /** The proposal for part number {@code part} alone. */
    Proposal plan(int part, int quantity) {
        List<List<BoxPlacement>> patterns = patterns(part);
        int[] capacity = patterns.stream().mapToInt(List::size).toArray();
        StockCover cover = new StockCover(capacity, stock, i -> cost(i, patterns.get(i)));
        StockCover.Cover sheets = stock.costs().dependOnRest()
                ? cover.cheapest(quantity, (i, k) -> cost(i, some(i, patterns.get(i), k)))
                : new StockCover.Cover(cover.sheets(quantity), -1);
        List<FilledSheet> filled = new ArrayList<>();
        int left = quantity;
        for (int offer : order(capacity, sheets.last())) {
            left = use(offer, sheets.sheets()[offer], left, patterns.get(offer), filled);
        }
        int[] missing = new int[parts.size()];
        missing[part] = left;
        return Proposal.of(filled, missing, stock, parts);
    }

    /** The best pattern of the part on each offer. */
    List<List<BoxPlacement>> patterns(int part) {
        List<List<BoxPlacement>> patterns = new ArrayList<>();
        BlockPattern pattern = new BlockPattern(part, parts.get(part), work);
        for (int i = 0; i < stock.size(); i++) {
            List<BoxPlacement> plain = pattern.fill(stock.region(i));
            List<BoxPlacement> seated = seated(part, i, pattern);
            patterns.add(seated.size() > plain.size() ? seated : plain);
        }
        return patterns;
    }

    /** One piece in the clamp strip and the pattern above it; empty where none may lie there. */
    private List<BoxPlacement> seated(int part, int offer, BlockPattern pattern) {
        BoxPlacement seat = stock.seat(offer, parts.get(part), part);
        if (seat == null) {
            return List.of();
        }
        Region r = stock.region(offer);
        int web = Ticks.of(parts.get(part).part().webMm());
        int above = Math.max(0, seat.y() + parts.get(part).turns().get(seat.turn()).width() + web);
        List<BoxPlacement> out = new ArrayList<>(List.of(seat));
        for (BoxPlacement b : pattern.fill(new Region(r.xMm(), r.yMm(), r.length(), r.width() - above, r.row()))) {
            out.add(new BoxPlacement(part, b.turn(), b.x(), b.y() + above));
        }
        return out;
    }

    private double cost(int offer, List<BoxPlacement> boxes) {
        return Proposal.cost(new FilledSheet(offer, boxes, 1), stock, parts);
    }

    /** So many pieces of a pattern, from the end or from the side of the clamps, whichever leaves the rest of more value. */
    private List<BoxPlacement> some(int offer, List<BoxPlacement> pattern, int pieces) {
        if (pieces >= pattern.size()) {
            return pattern;
        }
        List<BoxPlacement> byX = pattern.stream().sorted(BY_X).limit(pieces).toList();
        if (!stock.costs().dependOnRest()) {
            return byX;
        }
        List<BoxPlacement> byY = pattern.stream().sorted(BY_Y).limit(pieces).toList();
        return cost(offer, byY) < cost(offer, byX) - 1e-9 ? byY : byX;
    }

    /** Remnants first, then from the smallest sheet up, so that the rest stays on the largest; or on the one given. */
    private List<Integer> order(int[] capacity, int last) {
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < capacity.length; i++) {
            order.add(i);
        }
        order.sort(Comparator.<Integer, Boolean>comparing(i -> i == last).thenComparing(i -> !stock.offer(i).remnant())
                .thenComparing(i -> capacity[i]));
        return order;
    }

    private int use(int offer, int sheets, int left, List<BoxPlacement> pattern, List<FilledSheet> filled) {
        int full = pattern.isEmpty() ? 0 : Math.min(sheets, left / pattern.size());
        int rest = left - full * pattern.size();
        if (full > 0) {
            filled.add(new FilledSheet(offer, pattern, full));
        }
        if (full < sheets && rest > 0 && !pattern.isEmpty()) {
            filled.add(new FilledSheet(offer, some(offer, pattern, rest), 1));
            rest = 0;
        }
        return rest;
    }
}
