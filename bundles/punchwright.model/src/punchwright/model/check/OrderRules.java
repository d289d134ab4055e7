// SPDX-License-Identifier: EPL-2.0
package punchwright.model.check;

import java.time.LocalDate;

import punchwright.model.work.ItemState;
import punchwright.model.work.Order;
import punchwright.model.work.OrderLine;
import punchwright.model.work.WorkPackage.Literals;

/** Rules for orders. */
final class OrderRules {

    private OrderRules() {
    }

    static void addTo(Rules.Rows rows) {
        rows.error("PW-M-130", Order.class, (o, r) -> {
            if (o.getLines().isEmpty()) {
                r.add(Literals.ORDER__LINES);
            }
        });
        rows.error("PW-M-131", OrderLine.class, (l, r) -> {
            for (int lot : l.getLots()) {
                if (lot < 1) {
                    r.add(Literals.ORDER_LINE__LOTS, lot);
                }
            }
        });
        rows.warning("PW-M-132", Order.class, (o, r) -> {
            LocalDate received = GeneralRules.parse(o.getReceived());
            LocalDate due = GeneralRules.parse(o.getDueDate());
            if (received != null && due != null && due.isBefore(received)) {
                r.add(Literals.ORDER__DUE_DATE, o.getDueDate(), o.getReceived());
            }
        });
        rows.warning("PW-M-133", OrderLine.class, (l, r) -> {
            if (l.getItem() != null && !l.getItem().eIsProxy() && l.getItem().getState() != ItemState.RELEASED) {
                r.add(Literals.ORDER_LINE__ITEM, l.getItem(), l.getItem().getState());
            }
        });
        rows.warning("PW-M-134", Order.class, (o, r) -> {
            if (MaterialRules.isBlank(o.getNumber())) {
                r.add(Literals.ORDER__NUMBER);
            }
        });
    }
}
