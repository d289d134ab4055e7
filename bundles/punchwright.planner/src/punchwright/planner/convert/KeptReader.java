// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.convert;

import java.util.ArrayList;
import java.util.List;

import punchwright.engine.geometry.Pose;
import punchwright.engine.nesting.Layout;
import punchwright.engine.nesting.Placement;
import punchwright.engine.planning.KeptSheet;
import punchwright.model.shop.Machine;
import punchwright.model.work.KeptLayout;
import punchwright.model.work.KeptPlacement;
import punchwright.model.work.Order;

/** Layouts that the engineer arranged, for the engine. What has lost its stock, material or part is left to the model's rules. */
public final class KeptReader {

    private KeptReader() {
    }

    /** The kept layouts of an order for one machine, in order; those without a piece or a sheet are left out. */
    public static List<KeptSheet> read(Order order, Machine machine) {
        List<KeptSheet> kept = new ArrayList<>();
        for (KeptLayout layout : order.getLayouts()) {
            if (layout.getMachine() == machine && isWhole(layout)) {
                kept.add(new KeptSheet(layout.getId(), layout.getMaterial().getId(), layout.getThicknessMm(), layout(layout)));
            }
        }
        return kept;
    }

    private static boolean isWhole(KeptLayout layout) {
        return layout.getStock() != null && !layout.getStock().eIsProxy() && layout.getMaterial() != null
                && !layout.getMaterial().eIsProxy() && !layout.getPlacements().isEmpty()
                && layout.getPlacements().stream().allMatch(p -> p.getPart() != null && !p.getPart().eIsProxy());
    }

    /** One layout; its stock and parts must be there. */
    public static Layout layout(KeptLayout layout) {
        return new Layout(StockReader.offer(layout.getStock()),
                layout.getPlacements().stream().map(KeptReader::placement).toList(), layout.getRuns());
    }

    private static Placement placement(KeptPlacement p) {
        return new Placement(p.getPart().getId(), Pose.at(p.getXMm(), p.getYMm(), p.getAngleDeg()));
    }
}
