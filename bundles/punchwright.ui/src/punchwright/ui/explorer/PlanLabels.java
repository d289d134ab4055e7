// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.explorer;

import punchwright.model.shop.Machine;
import punchwright.model.work.Order;
import punchwright.ui.job.PlanNames;
import punchwright.ui.session.Session;
import punchwright.ui.text.Texts;

/** A plan's name for people, from its identifier alone, since the plan is not read for the list. */
final class PlanLabels {

    private PlanLabels() {
    }

    static String of(Session session, String id) {
        for (Order order : session.workspace().orders()) {
            for (Machine machine : session.workspace().library().getMachines()) {
                if (PlanNames.id(order, machine).equals(id)) {
                    return Texts.of("explorer.plan", order.getNumber(), machine.getName());
                }
            }
        }
        return id;
    }
}
