// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.editor;

import org.eclipse.emf.ecore.EObject;

import punchwright.model.plan.Plan;
import punchwright.model.shop.Library;
import punchwright.model.shop.Machine;
import punchwright.model.shop.Material;
import punchwright.model.shop.MultiToolHolder;
import punchwright.model.shop.StockSheet;
import punchwright.model.shop.Tool;
import punchwright.model.work.Assembly;
import punchwright.model.work.Order;
import punchwright.model.work.PurchasedItem;
import punchwright.ui.theme.Icons;

/** The sign of each kind of object. */
public final class Signs {

    private Signs() {
    }

    /** Its sign. */
    public static Icons of(EObject object) {
        return switch (object) {
            case Library l -> Icons.SHOP;
            case Machine m -> Icons.MACHINE;
            case Tool t -> Icons.TOOL;
            case MultiToolHolder h -> Icons.HOLDER;
            case Material m -> Icons.MATERIAL;
            case StockSheet s -> Icons.STOCK;
            case Order o -> Icons.ORDER;
            case Plan p -> Icons.PLAN;
            case Assembly a -> Icons.ASSEMBLY;
            case PurchasedItem i -> Icons.PURCHASED;
            default -> Icons.PART;
        };
    }
}
