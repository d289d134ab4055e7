// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.plan;

import punchwright.model.plan.Plan;
import punchwright.model.shop.Library;
import punchwright.ui.text.Numbers;
import punchwright.ui.text.Texts;

/** One line that says what a plan is, for whom, on what, how long and how much. */
final class PlanTitle {

    private PlanTitle() {
    }

    static String of(Plan plan) {
        String order = plan.getOrder() == null ? "" : plan.getOrder().getNumber() + " " + plan.getOrder().getName();
        String machine = plan.getMachine() == null ? "" : plan.getMachine().getName();
        return Texts.of("plan.title", order, machine, Texts.of(plan.getStatus()), Numbers.time(plan.getTotalTimeS()),
                Numbers.fixed(plan.getTotalCost(), 2), currency(plan), plan.getLibraryRevision(), plan.getProgramVersion());
    }

    /** Currency of the library that the plan's machine stands in. */
    static String currency(Plan plan) {
        return plan.getMachine() != null && plan.getMachine().eContainer() instanceof Library library
                ? library.getCurrency() : "";
    }
}
