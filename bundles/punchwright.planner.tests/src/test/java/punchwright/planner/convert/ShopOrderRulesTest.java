// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.convert;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.junit.jupiter.api.Test;

import punchwright.engine.sequence.FormOrder;
import punchwright.engine.sequence.PrecedenceRule;
import punchwright.engine.sequence.WorkKind;
import punchwright.model.shop.Library;
import punchwright.model.shop.OrderRule;
import punchwright.model.shop.SheetWork;
import punchwright.model.shop.ShopFactory;
import punchwright.model.shop.Tool;

/** Order rules of the shop as the engine asks them. */
class ShopOrderRulesTest {

    private final Library library = ShopFactory.eINSTANCE.createLibrary();

    private void rule(SheetWork first, Tool firstTool, SheetWork later, Tool laterTool, String reason) {
        OrderRule rule = ShopFactory.eINSTANCE.createOrderRule();
        rule.setName("rule");
        rule.setFirstWork(first);
        rule.setFirstTool(firstTool);
        rule.setLaterWork(later);
        rule.setLaterTool(laterTool);
        rule.setReason(reason);
        library.getOrderRules().add(rule);
    }

    @Test
    void everyStatementOfARuleIsRead() {
        Tool tool = ShopFactory.eINSTANCE.createTool();
        tool.setId("T-1");
        rule(SheetWork.FORM, null, SheetWork.ANY, tool, "Last of all.");
        rule(SheetWork.EDGE_NEAR_FORM, null, SheetWork.OPENING, null, " ");
        rule(SheetWork.SEPARATING, tool, SheetWork.ANY, null, "says nothing of what comes later");
        assertEquals(List.of(new PrecedenceRule(WorkKind.FORM, null, null, "T-1", FormOrder.ANY, "Last of all."),
                new PrecedenceRule(WorkKind.SLIT_NEAR_FORM, null, WorkKind.OPENING, null, FormOrder.ANY, "rule")),
                ShopOrderRules.of(library));
    }

    @Test
    void aShopWithoutRulesAddsNone() {
        assertEquals(List.of(), ShopOrderRules.of(library));
    }
}
