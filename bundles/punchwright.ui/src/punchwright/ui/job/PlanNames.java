// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.job;

import punchwright.model.shop.Machine;
import punchwright.model.work.Order;

/** Names of plans: an order has one kept plan for each machine. */
public final class PlanNames {

    private PlanNames() {
    }

    /** Identifier of the plan of an order on a machine, as the planner gives it. */
    public static String id(Order order, Machine machine) {
        return "plan-" + order.getId() + "-" + machine.getId();
    }
}
