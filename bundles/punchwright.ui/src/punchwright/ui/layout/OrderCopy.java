// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.layout;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.eclipse.emf.ecore.util.EcoreUtil;

import punchwright.model.shop.Library;
import punchwright.model.shop.Machine;
import punchwright.model.work.Assembly;
import punchwright.model.work.Item;
import punchwright.model.work.KeptLayout;
import punchwright.model.work.KeptPlacement;
import punchwright.model.work.Order;

/**
 * An order with its items and the library as they are now, copied on the UI thread so that a job can read them while people go on
 * working.
 */
final class OrderCopy {

    private final Library library;
    private final Order order;
    private final Machine machine;

    OrderCopy(Library library, Order order, Machine machine) {
        EcoreUtil.Copier copier = new EcoreUtil.Copier();
        this.library = (Library) copier.copy(library);
        items(order).forEach(copier::copy);
        this.order = (Order) copier.copy(order);
        copier.copyReferences();
        this.machine = (Machine) copier.get(machine);
    }

    private static Set<Item> items(Order order) {
        Set<Item> items = new LinkedHashSet<>();
        order.getLines().forEach(l -> add(l.getItem(), items));
        order.getLayouts().stream().map(KeptLayout::getPlacements).flatMap(List::stream).map(KeptPlacement::getPart)
                .forEach(p -> add(p, items));
        return items;
    }

    private static void add(Item item, Set<Item> items) {
        if (item != null && !item.eIsProxy() && items.add(item) && item instanceof Assembly assembly) {
            assembly.getItems().forEach(i -> add(i.getItem(), items));
        }
    }

    Library library() {
        return library;
    }

    Machine machine() {
        return machine;
    }

    Order order() {
        return order;
    }

    /** Takes out the machine's layouts in which nothing is locked: they are made anew. */
    OrderCopy lockedOnly() {
        order.getLayouts().removeIf(l -> l.getMachine() == machine
                && l.getPlacements().stream().noneMatch(KeptPlacement::isLocked));
        return this;
    }
}
