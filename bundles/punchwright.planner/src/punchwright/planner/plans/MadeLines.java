// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.plans;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import punchwright.engine.planning.EnginePlan;
import punchwright.engine.planning.SheetRun;
import punchwright.model.work.Order;
import punchwright.model.work.OrderLine;
import punchwright.model.work.Want;
import punchwright.planner.convert.OrderReader;

/**
 * How many of each order line a plan makes. What must be made is made whole, or there is no plan; what is left of the pieces on
 * the sheets goes to the lines that may be made or fill up, in their order.
 */
final class MadeLines {

    private final Map<OrderLine, Integer> made = new LinkedHashMap<>();

    private MadeLines() {
    }

    /** The lines of which something is made, in the order's order, with the quantity made. */
    static Map<OrderLine, Integer> of(Order order, EnginePlan plan) {
        Map<String, Integer> left = new LinkedHashMap<>();
        plan.jobs().stream().flatMap(j -> j.runs().stream()).map(SheetRun::layout)
                .forEach(l -> l.placements().forEach(p -> left.merge(p.partId(), l.runs(), Integer::sum)));
        MadeLines lines = new MadeLines();
        List<OrderLine> all = order.getLines();
        all.stream().filter(l -> l.getWant() == Want.MUST).forEach(l -> lines.take(l, l.getQuantity(), left));
        all.stream().filter(l -> l.getWant() != Want.MUST).forEach(l -> lines.take(l, lines.possible(l, left), left));
        Map<OrderLine, Integer> ordered = new LinkedHashMap<>();
        all.stream().filter(l -> lines.made.get(l) > 0).forEach(l -> ordered.put(l, lines.made.get(l)));
        return ordered;
    }

    private void take(OrderLine line, int quantity, Map<String, Integer> left) {
        made.put(line, quantity);
        OrderReader.pieces(line, quantity).forEach((part, pieces) -> left.merge(part.getId(), -pieces, Integer::sum));
    }

    private int possible(OrderLine line, Map<String, Integer> left) {
        int possible = line.getQuantity();
        for (var need : OrderReader.pieces(line, 1).entrySet()) {
            possible = Math.min(possible, Math.max(0, left.getOrDefault(need.getKey().getId(), 0)) / need.getValue());
        }
        return possible;
    }
}
