// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.convert;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;

import org.junit.jupiter.api.Test;

import punchwright.model.work.Assembly;
import punchwright.model.work.AssemblyItem;
import punchwright.model.work.Item;
import punchwright.model.work.Order;
import punchwright.model.work.OrderLine;
import punchwright.model.work.Part;
import punchwright.model.work.WorkFactory;

/** Exploding an order into parts and pieces. */
class OrderReaderTest {

    private static final WorkFactory WORK = WorkFactory.eINSTANCE;

    private final Part plate = part("plate");
    private final Part clip = part("clip");

    private static Part part(String id) {
        Part p = WORK.createPart();
        p.setId(id);
        p.setNumber(id);
        return p;
    }

    private static Assembly assembly(String id) {
        Assembly a = WORK.createAssembly();
        a.setId(id);
        a.setNumber(id);
        return a;
    }

    private static void add(Assembly to, Item item, int quantity) {
        AssemblyItem i = WORK.createAssemblyItem();
        i.setItem(item);
        i.setQuantity(quantity);
        to.getItems().add(i);
    }

    private static Order order(Object... itemsAndQuantities) {
        Order order = WORK.createOrder();
        order.setNumber("A-1");
        for (int i = 0; i < itemsAndQuantities.length; i += 2) {
            OrderLine line = WORK.createOrderLine();
            line.setId("line" + i);
            line.setItem((Item) itemsAndQuantities[i]);
            line.setQuantity((Integer) itemsAndQuantities[i + 1]);
            order.getLines().add(line);
        }
        return order;
    }

    @Test
    void quantitiesMultiplyThroughAllLevelsAndAddUpOverLines() {
        Assembly inner = assembly("inner");
        add(inner, clip, 4);
        add(inner, WORK.createPurchasedItem(), 9);
        Assembly outer = assembly("outer");
        add(outer, inner, 2);
        add(outer, plate, 1);

        Map<Part, Integer> pieces = OrderReader.pieces(order(outer, 10, clip, 7));

        assertEquals(Map.of(clip, 10 * 2 * 4 + 7, plate, 10), pieces);
    }

    @Test
    void anAssemblyThatContainsItselfIsRefusedByName() {
        Assembly a = assembly("ring");
        Assembly b = assembly("link");
        add(a, b, 1);
        add(b, a, 1);

        InputException e = assertThrows(InputException.class, () -> OrderReader.pieces(order(a, 1)));

        assertEquals(InputReason.ASSEMBLY_CYCLE, e.finding().reason());
        assertTrue(e.finding().message().contains("ring"), e.finding().message());
    }

    @Test
    void theSameAssemblyMayBeUsedTwiceSideBySide() {
        Assembly set = assembly("set");
        add(set, clip, 3);
        Assembly pair = assembly("pair");
        add(pair, set, 1);
        add(pair, set, 1);

        assertEquals(Map.of(clip, 6), OrderReader.pieces(order(pair, 1)));
    }

    @Test
    void aLineWithoutItemIsRefusedWithOrderAndLine() {
        InputException e = assertThrows(InputException.class, () -> OrderReader.pieces(order(null, 1)));

        assertTrue(e.finding().message().contains("A-1") && e.finding().message().contains("line0"), e.finding().message());
        assertTrue(!e.finding().remedy().isEmpty());
    }
}
