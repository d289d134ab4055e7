// SPDX-License-Identifier: EPL-2.0
package punchwright.model.check;

import punchwright.model.shop.OrderRule;
import punchwright.model.shop.SheetWork;
import punchwright.model.shop.ShopPackage.Literals;

/** Rules for the order that the engineer adds to the usual one. */
final class OrderRuleRules {

    private OrderRuleRules() {
    }

    static void addTo(Rules.Rows rows) {
        rows.error("PW-M-072", OrderRule.class, (rule, r) -> {
            if (rule.getFirstWork() == SheetWork.ANY && rule.getFirstTool() == null) {
                r.add(Literals.ORDER_RULE__FIRST_WORK);
            } else if (rule.getLaterWork() == SheetWork.ANY && rule.getLaterTool() == null) {
                r.add(Literals.ORDER_RULE__LATER_WORK);
            }
        });
        rows.error("PW-M-073", OrderRule.class, (rule, r) -> {
            boolean stated = rule.getFirstWork() != SheetWork.ANY || rule.getFirstTool() != null;
            if (stated && rule.getFirstWork() == rule.getLaterWork() && rule.getFirstTool() == rule.getLaterTool()) {
                r.add(Literals.ORDER_RULE__LATER_WORK);
            }
        });
    }
}
