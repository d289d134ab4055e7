// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.convert;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

import punchwright.engine.finding.Finding;
import punchwright.model.work.Assembly;
import punchwright.model.work.AssemblyItem;
import punchwright.model.work.Item;
import punchwright.model.work.Order;
import punchwright.model.work.OrderLine;
import punchwright.model.work.Part;
import punchwright.model.work.Want;

/** Explodes an order into parts and pieces; purchased items are left out, they are not punched. */
public final class OrderReader {

    private final Map<Part, Integer> pieces = new LinkedHashMap<>();
    private final Set<Assembly> open = new LinkedHashSet<>();
    private final Order order;

    private OrderReader(Order order) {
        this.order = order;
    }

    /**
     * Pieces of each part for the whole order, in the order of its lines.
     *
     * @throws InputException when a line has no item or an assembly contains itself
     */
    public static Map<Part, Integer> pieces(Order order) {
        OrderReader reader = new OrderReader(order);
        for (OrderLine line : order.getLines()) {
            reader.add(line.getItem(), line.getQuantity(), line.getId());
        }
        return reader.pieces;
    }

    /**
     * Pieces of each part for the whole order by how firmly they are wanted, in the order of its lines.
     *
     * @throws InputException as {@link #pieces(Order)}
     */
    public static Map<Part, Map<Want, Integer>> wanted(Order order) {
        Map<Part, Map<Want, Integer>> wanted = new LinkedHashMap<>();
        for (OrderLine line : order.getLines()) {
            pieces(line, line.getQuantity()).forEach((part, pieces) -> wanted
                    .computeIfAbsent(part, p -> new EnumMap<>(Want.class)).merge(line.getWant(), pieces, Integer::sum));
        }
        return wanted;
    }

    /** Pieces of each part in one line for a quantity of its item. */
    public static Map<Part, Integer> pieces(OrderLine line, int quantity) {
        OrderReader reader = new OrderReader((Order) line.eContainer());
        reader.add(line.getItem(), quantity, line.getId());
        return reader.pieces;
    }

    private void add(Item item, int quantity, String where) {
        if (item instanceof Part part) {
            pieces.merge(part, quantity, Integer::sum);
        } else if (item instanceof Assembly assembly) {
            explode(assembly, quantity);
        } else if (item == null || item.eIsProxy()) {
            throw new InputException(Finding.of(InputReason.LINE_WITHOUT_ITEM, "order " + order.getNumber(),
                    order.getNumber(), where));
        }
    }

    private void explode(Assembly assembly, int quantity) {
        if (!open.add(assembly)) {
            throw new InputException(Finding.of(InputReason.ASSEMBLY_CYCLE, "assembly " + assembly.getNumber(),
                    assembly.getNumber(), order.getNumber()));
        }
        for (AssemblyItem item : assembly.getItems()) {
            add(item.getItem(), quantity * item.getQuantity(), assembly.getNumber());
        }
        open.remove(assembly);
    }
}
