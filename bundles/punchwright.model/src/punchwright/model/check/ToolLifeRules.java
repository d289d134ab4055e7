// SPDX-License-Identifier: EPL-2.0
package punchwright.model.check;

import java.util.EnumSet;
import java.util.Set;

import punchwright.model.shop.GroupLife;
import punchwright.model.shop.ItemStatus;
import punchwright.model.shop.MaterialGroup;
import punchwright.model.shop.ShopPackage.Literals;
import punchwright.model.shop.Tool;

/** Rules for the life and state of a tool. */
final class ToolLifeRules {

    private ToolLifeRules() {
    }

    static void addTo(Rules.Rows rows) {
        rows.warning("PW-M-062", Tool.class, (t, r) -> {
            if (t.getLives().isEmpty() && ToolSizes.cuts(t.getShape())) {
                r.add(Literals.TOOL__LIVES);
            }
        });
        rows.error("PW-M-063", Tool.class, ToolLifeRules::groupsOnce);
        rows.warning("PW-M-064", Tool.class, (t, r) -> {
            int life = longestLife(t);
            if (life > 0 && t.getGrindsLeft() > 0 && t.getHitsSinceLastGrind() > life) {
                r.add(Literals.TOOL__HITS_SINCE_LAST_GRIND, t.getHitsSinceLastGrind(), life);
            }
        });
        rows.error("PW-M-065", Tool.class, (t, r) -> {
            int life = longestLife(t);
            if (life > 0 && t.getGrindsLeft() == 0 && t.getStatus() == ItemStatus.IN_USE && t.getHitsSinceLastGrind() > life) {
                r.add(Literals.TOOL__STATUS, t.getHitsSinceLastGrind(), life);
            }
        });
        rows.warning("PW-M-066", Tool.class, (t, r) -> {
            if (t.getOnHand() == 0 && t.getStatus() == ItemStatus.IN_USE) {
                r.add(Literals.TOOL__ON_HAND);
            }
        });
        rows.warning("PW-M-067", Tool.class, (t, r) -> {
            if (t.getPrice() == 0) {
                r.add(Literals.TOOL__PRICE);
            }
        });
        rows.warning("PW-M-068", Tool.class, (t, r) -> {
            if (t.getResidualValue() > t.getPrice()) {
                r.add(Literals.TOOL__RESIDUAL_VALUE, t.getResidualValue(), t.getPrice());
            }
        });
        rows.note("PW-M-069", Tool.class, (t, r) -> {
            if (t.getLocation() == null || t.getLocation().isBlank()) {
                r.add(Literals.TOOL__LOCATION);
            }
        });
    }

    private static void groupsOnce(Tool tool, Report report) {
        Set<MaterialGroup> seen = EnumSet.noneOf(MaterialGroup.class);
        for (GroupLife life : tool.getLives()) {
            if (!seen.add(life.getGroup())) {
                report.on(life, Literals.GROUP_LIFE__GROUP, life.getGroup());
            }
        }
    }

    private static int longestLife(Tool tool) {
        return tool.getLives().stream().mapToInt(GroupLife::getHitsPerGrind).max().orElse(0);
    }
}
