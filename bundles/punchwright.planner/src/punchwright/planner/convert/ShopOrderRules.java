// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.convert;

import java.util.List;

import punchwright.engine.sequence.FormOrder;
import punchwright.engine.sequence.PrecedenceRule;
import punchwright.engine.sequence.WorkKind;
import punchwright.model.shop.Library;
import punchwright.model.shop.OrderRule;
import punchwright.model.shop.SheetWork;
import punchwright.model.shop.Tool;

/** Order rules that the engineer adds, for the engine. */
public final class ShopOrderRules {

    private ShopOrderRules() {
    }

    /** In the order of the library; without those that say nothing on one of their sides. */
    public static List<PrecedenceRule> of(Library library) {
        return library.getOrderRules().stream().map(ShopOrderRules::read)
                .filter(r -> (r.before() != null || r.beforeTool() != null) && (r.after() != null || r.afterTool() != null))
                .toList();
    }

    private static PrecedenceRule read(OrderRule r) {
        String reason = r.getReason() == null || r.getReason().isBlank() ? String.valueOf(r.getName()) : r.getReason();
        return new PrecedenceRule(kind(r.getFirstWork()), id(r.getFirstTool()), kind(r.getLaterWork()), id(r.getLaterTool()),
                FormOrder.ANY, reason);
    }

    private static String id(Tool tool) {
        return tool == null || tool.eIsProxy() ? null : tool.getId();
    }

    private static WorkKind kind(SheetWork work) {
        return switch (work) {
            case ANY -> null;
            case OPENING -> WorkKind.OPENING;
            case EDGE_NEAR_FORM -> WorkKind.SLIT_NEAR_FORM;
            case FORM -> WorkKind.FORM;
            case SEPARATING -> WorkKind.SEPARATING;
        };
    }
}
