// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import punchwright.engine.nesting.boxes.Work;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** One part, any quantity: the block pattern of each offer and the cheapest mix of sheets. */
final class SinglePlanner {

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
        int[] sheets = new StockCover(capacity, stock).sheets(quantity);
        List<FilledSheet> filled = new ArrayList<>();
        int left = quantity;
        for (int offer : order(capacity)) {
            left = use(offer, sheets[offer], left, patterns.get(offer), filled);
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
            patterns.add(pattern.fill(stock.region(i)));
        }
        return patterns;
    }

    /** Remnants first, then from the smallest sheet up, so that the rest stays on the largest. */
    private List<Integer> order(int[] capacity) {
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < capacity.length; i++) {
            order.add(i);
        }
        order.sort(Comparator.<Integer, Boolean>comparing(i -> !stock.offer(i).remnant()).thenComparing(i -> capacity[i]));
        return order;
    }

    private static int use(int offer, int sheets, int left, List<BoxPlacement> pattern, List<FilledSheet> filled) {
        int full = pattern.isEmpty() ? 0 : Math.min(sheets, left / pattern.size());
        int rest = left - full * pattern.size();
        if (full > 0) {
            filled.add(new FilledSheet(offer, pattern, full));
        }
        if (full < sheets && rest > 0 && !pattern.isEmpty()) {
            filled.add(new FilledSheet(offer, pattern.subList(0, rest), 1));
            rest = 0;
        }
        return rest;
    }
}
