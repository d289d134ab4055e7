// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.plans;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import punchwright.engine.costing.CostLine;
import punchwright.model.work.Assembly;
import punchwright.model.work.AssemblyItem;
import punchwright.model.work.Item;
import punchwright.model.work.OrderLine;
import punchwright.model.work.PurchasedItem;
import punchwright.planner.convert.OrderReader;

/** One order line as the costing wants it: punched parts, bought items and joining time for one piece of the line. */
final class LineInput {

    private final OrderLine line;

    LineInput(OrderLine line) {
        this.line = line;
    }

    /** {@code quantity} of the line are made. */
    CostLine costLine(int quantity, Set<String> plannedParts) {
        List<CostLine.Need> needs = new ArrayList<>();
        OrderReader.pieces(line, 1).forEach((part, pieces) -> {
            if (plannedParts.contains(part.getId())) {
                needs.add(new CostLine.Need(part.getId(), pieces));
            }
        });
        Map<PurchasedItem, Integer> bought = new LinkedHashMap<>();
        double joining = collect(line.getItem(), 1, bought);
        List<CostLine.Purchase> purchases = new ArrayList<>();
        bought.forEach((item, pieces) -> purchases
                .add(new CostLine.Purchase(item.getId(), item.getNumber() + " " + item.getName(), item.getPrice(), pieces)));
        return new CostLine(line.getId(), line.getItem().getNumber() + " " + line.getItem().getName(), quantity,
                needs, purchases, joining, line.getLots());
    }

    /** Joining minutes of one piece through all levels; fills the bought items on the way. */
    private static double collect(Item item, int pieces, Map<PurchasedItem, Integer> bought) {
        if (item instanceof PurchasedItem purchased) {
            bought.merge(purchased, pieces, Integer::sum);
            return 0;
        }
        if (!(item instanceof Assembly assembly)) {
            return 0;
        }
        double minutes = assembly.getJoiningMinutes() * pieces;
        for (AssemblyItem child : assembly.getItems()) {
            minutes += collect(child.getItem(), pieces * child.getQuantity(), bought);
        }
        return minutes;
    }
}
