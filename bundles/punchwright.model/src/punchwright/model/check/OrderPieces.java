// SPDX-License-Identifier: EPL-2.0
package punchwright.model.check;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

import punchwright.model.work.Assembly;
import punchwright.model.work.AssemblyItem;
import punchwright.model.work.Item;
import punchwright.model.work.KeptLayout;
import punchwright.model.work.KeptPlacement;
import punchwright.model.work.Order;
import punchwright.model.work.OrderLine;
import punchwright.model.work.Part;

/** Pieces of parts that an order asks for, and that kept layouts make. Assemblies are exploded. */
final class OrderPieces {

    private static final int DEEPEST_ASSEMBLY = 50;

    private OrderPieces() {
    }

    /** Pieces of each part in the lines that count, in the order of the lines. */
    static Map<Part, Integer> ordered(Order order, Predicate<OrderLine> counts) {
        Map<Part, Integer> pieces = new LinkedHashMap<>();
        order.getLines().stream().filter(counts).forEach(line -> add(line.getItem(), line.getQuantity(), pieces, 0));
        return pieces;
    }

    private static void add(Item item, int quantity, Map<Part, Integer> pieces, int depth) {
        if (item instanceof Part part) {
            pieces.merge(part, quantity, Integer::sum);
        } else if (item instanceof Assembly assembly && depth < DEEPEST_ASSEMBLY) {
            for (AssemblyItem line : assembly.getItems()) {
                add(line.getItem(), quantity * line.getQuantity(), pieces, depth + 1);
            }
        }
    }

    /** Pieces of each part in the kept layouts that count. */
    static Map<Part, Integer> kept(Order order, Predicate<KeptLayout> counts) {
        Map<Part, Integer> pieces = new LinkedHashMap<>();
        for (KeptLayout layout : order.getLayouts()) {
            for (KeptPlacement p : counts.test(layout) ? layout.getPlacements() : List.<KeptPlacement>of()) {
                if (p.getPart() != null) {
                    pieces.merge(p.getPart(), layout.getRuns(), Integer::sum);
                }
            }
        }
        return pieces;
    }
}
