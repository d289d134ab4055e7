// SPDX-License-Identifier: EPL-2.0
package punchwright.model.check;

import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;

import punchwright.model.shop.Machine;
import punchwright.model.shop.Material;
import punchwright.model.shop.StockSheet;
import punchwright.model.work.KeptLayout;
import punchwright.model.work.KeptPlacement;
import punchwright.model.work.Order;
import punchwright.model.work.Part;
import punchwright.model.work.Want;
import punchwright.model.work.WorkPackage.Literals;

/**
 * Rules for layouts that the engineer arranged: whether they still go with order, stock and machine. Whether parts overlap needs
 * their shapes; the planner checks that.
 */
final class KeptLayoutRules {

    private static final double SAME_MM = 1e-6;

    private KeptLayoutRules() {
    }

    static void addTo(Rules.Rows rows) {
        rows.error("PW-M-135", KeptLayout.class, (l, r) -> {
            StockSheet s = l.getStock();
            if (isThere(s) && !goesWith(l, s.getMaterial(), s.getThicknessMm())) {
                r.add(Literals.KEPT_LAYOUT__STOCK, s, s.getMaterial(), s.getThicknessMm(), l.getMaterial(), l.getThicknessMm());
            }
        });
        rows.error("PW-M-136", KeptLayout.class, KeptLayoutRules::partsOfAnotherSheet);
        rows.warning("PW-M-137", Order.class, KeptLayoutRules::tooMany);
        rows.warning("PW-M-138", KeptLayout.class, KeptLayoutRules::notOrdered);
        rows.warning("PW-M-139", Order.class, (o, r) -> {
            if (!o.getLines().isEmpty() && o.getLines().stream().allMatch(l -> l.getWant() == Want.FILLER)) {
                r.add(Literals.ORDER__LINES);
            }
        });
        rows.error("PW-M-155", KeptLayout.class, KeptLayoutRules::machineTakesIt);
        rows.warning("PW-M-156", KeptLayout.class, KeptLayoutRules::stockLasts);
        rows.warning("PW-M-157", KeptLayout.class, (l, r) -> {
            if (l.getPlacements().isEmpty()) {
                r.add(Literals.KEPT_LAYOUT__PLACEMENTS);
            }
        });
    }

    private static boolean isThere(EObject object) {
        return object != null && !object.eIsProxy();
    }

    /** What has no material yet breaks another rule. */
    private static boolean goesWith(KeptLayout layout, Material material, double thicknessMm) {
        return material == null || layout.getMaterial() == null || material == layout.getMaterial() && Math.abs(thicknessMm - layout.getThicknessMm()) < SAME_MM;
    }

    private static void partsOfAnotherSheet(KeptLayout layout, Report report) {
        Set<Part> seen = new LinkedHashSet<>();
        for (KeptPlacement p : layout.getPlacements()) {
            Part part = p.getPart();
            if (isThere(part) && seen.add(part) && !goesWith(layout, part.getMaterial(), part.getThicknessMm())) {
                report.on(p, Literals.KEPT_PLACEMENT__PART, part, part.getMaterial(), part.getThicknessMm(), layout.getMaterial(),
                        layout.getThicknessMm());
            }
        }
    }

    /** For each machine on its own: the order is made on one of them. */
    private static void tooMany(Order order, Report report) {
        Map<Part, Integer> ordered = OrderPieces.ordered(order, l -> true);
        Set<Machine> machines = new LinkedHashSet<>();
        order.getLayouts().stream().map(KeptLayout::getMachine).filter(KeptLayoutRules::isThere).forEach(machines::add);
        for (Machine machine : machines) {
            OrderPieces.kept(order, l -> l.getMachine() == machine).forEach((part, pieces) -> {
                if (ordered.containsKey(part) && pieces > ordered.get(part)) {
                    report.add(Literals.ORDER__LAYOUTS, machine, pieces, part, ordered.get(part));
                }
            });
        }
    }

    private static void notOrdered(KeptLayout layout, Report report) {
        if (layout.eContainer() instanceof Order order) {
            Set<Part> ordered = OrderPieces.ordered(order, l -> true).keySet();
            Set<Part> seen = new LinkedHashSet<>();
            for (KeptPlacement p : layout.getPlacements()) {
                if (isThere(p.getPart()) && !ordered.contains(p.getPart()) && seen.add(p.getPart())) {
                    report.on(p, Literals.KEPT_PLACEMENT__PART, p.getPart(), order);
                }
            }
        }
    }

    private static void machineTakesIt(KeptLayout layout, Report report) {
        Machine m = layout.getMachine();
        StockSheet s = layout.getStock();
        if (!isThere(m) || !isThere(s)) {
            return;
        }
        if (m.getLongestSheetMm() > 0 && s.getLengthMm() > m.getLongestSheetMm() + SAME_MM) {
            report.add(Literals.KEPT_LAYOUT__STOCK, s, s.getLengthMm(), m, m.getLongestSheetMm());
        }
        if (m.getMaxThicknessMm() > 0 && layout.getThicknessMm() > m.getMaxThicknessMm() + SAME_MM) {
            report.add(Literals.KEPT_LAYOUT__THICKNESS_MM, s, layout.getThicknessMm(), m, m.getMaxThicknessMm());
        }
    }

    /** Sheets that cannot be ordered last for the kept layouts of one machine. */
    private static void stockLasts(KeptLayout layout, Report report) {
        StockSheet s = layout.getStock();
        if (isThere(s) && !s.isOrderable() && layout.eContainer() instanceof Order order) {
            int runs = order.getLayouts().stream().filter(l -> l.getMachine() == layout.getMachine() && l.getStock() == s)
                    .mapToInt(KeptLayout::getRuns).sum();
            if (runs > s.getQuantity()) {
                report.add(Literals.KEPT_LAYOUT__RUNS, s, runs, s.getQuantity());
            }
        }
    }
}
