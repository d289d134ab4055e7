// SPDX-License-Identifier: EPL-2.0
package punchwright.model.check;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

import org.eclipse.emf.ecore.EObject;

import punchwright.model.plan.CostItem;
import punchwright.model.plan.LotCost;
import punchwright.model.plan.Plan;
import punchwright.model.plan.PlanPackage.Literals;

/** Rules for the cost in a plan. */
final class CostRules {

    /** A name that a spreadsheet cell can carry: not like a cell address (AB12, R1C1) and not R or C alone. */
    private static final Pattern NAME = Pattern.compile("(?!(?i:[a-z]{1,3}\\d+|r\\d*c?\\d*|c\\d*)$)[A-Za-z_][A-Za-z0-9_]{0,250}");

    private CostRules() {
    }

    static void addTo(Rules.Rows rows) {
        rows.error("PW-M-150", CostItem.class, (c, r) -> {
            if (c.getKey() == null || !NAME.matcher(c.getKey()).matches()) {
                r.add(Literals.COST_ITEM__KEY, c.getKey() == null ? "" : c.getKey());
            }
        });
        rows.error("PW-M-151", LotCost.class, CostRules::keysOnce);
        rows.error("PW-M-153", LotCost.class, CostRules::inputsThere);
        rows.error("PW-M-154", Plan.class, CostRules::figuresInOrder);
        rows.error("PW-M-152", LotCost.class, (l, r) -> {
            if (Math.abs(l.getPerPiece() * l.getQuantity() - l.getTotal()) > 0.005 * Math.max(1, l.getQuantity())) {
                r.add(Literals.LOT_COST__TOTAL, l.getTotal(), l.getPerPiece(), l.getQuantity());
            }
        });
    }

    private static void keysOnce(LotCost lot, Report report) {
        Set<String> seen = new HashSet<>();
        for (CostItem item : items(lot)) {
            if (!seen.add(item.getKey())) {
                report.on(item, Literals.COST_ITEM__KEY, item.getKey());
            }
        }
    }

    private static void inputsThere(LotCost lot, Report report) {
        List<CostItem> items = items(lot);
        Set<String> keys = new HashSet<>();
        items.forEach(i -> keys.add(i.getKey()));
        if (lot.eContainer() instanceof Plan plan) {
            plan.getFigures().forEach(f -> keys.add(f.getKey()));
        }
        for (CostItem item : items) {
            for (String input : item.getInputs()) {
                if (!keys.contains(input)) {
                    report.on(item, Literals.COST_ITEM__INPUTS, input);
                }
            }
        }
    }

    private static void figuresInOrder(Plan plan, Report report) {
        Set<String> keys = new HashSet<>();
        for (CostItem figure : plan.getFigures()) {
            for (String input : figure.getInputs()) {
                if (!keys.contains(input)) {
                    report.on(figure, Literals.COST_ITEM__INPUTS, input);
                }
            }
            if (!keys.add(figure.getKey())) {
                report.on(figure, Literals.COST_ITEM__KEY, String.valueOf(figure.getKey()));
            }
        }
    }

    private static List<CostItem> items(LotCost lot) {
        List<CostItem> items = new ArrayList<>();
        for (Iterator<EObject> all = lot.eAllContents(); all.hasNext();) {
            if (all.next() instanceof CostItem item && item.getKey() != null) {
                items.add(item);
            }
        }
        return items;
    }
}
