// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.plan;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeColumn;
import org.eclipse.swt.widgets.TreeItem;

import punchwright.model.plan.CostItem;
import punchwright.model.plan.LotCost;
import punchwright.model.plan.Plan;
import punchwright.ui.table.Accessibles;
import punchwright.ui.text.Numbers;
import punchwright.ui.text.Texts;

/** The ledger: the cost of each line and lot as a tree, every figure with the formula and source it comes from. */
final class LedgerTree {

    private static final String[] COLUMNS = { "col.costItem 280", "col.value 110", "col.unit 60", "col.formula 230", "col.source 260" };

    private final Tree tree;

    LedgerTree(Composite parent) {
        tree = new Tree(parent, SWT.FULL_SELECTION | SWT.BORDER);
        tree.setHeaderVisible(true);
        Accessibles.name(tree, Texts.of("plan.ledger"));
        for (String column : COLUMNS) {
            String[] parts = column.split(" ");
            TreeColumn header = new TreeColumn(tree, parts[0].equals("col.value") ? SWT.RIGHT : SWT.LEFT);
            header.setText(Texts.of(parts[0]));
            header.setWidth(Integer.parseInt(parts[1]));
        }
    }

    Tree control() {
        return tree;
    }

    void show(Plan plan, String currency) {
        tree.setRedraw(false);
        tree.removeAll();
        for (LotCost cost : plan.getCosts()) {
            TreeItem item = new TreeItem(tree, SWT.NONE);
            String name = cost.getLine() == null || cost.getLine().getItem() == null ? "" : cost.getLine().getItem().getName();
            item.setText(new String[] { Texts.of("plan.lot", name, cost.getQuantity()), Numbers.fixed(cost.getTotal(), 2), currency,
                Texts.of("plan.perPiece", Numbers.fixed(cost.getPerPiece(), 2), currency), "" });
            if (cost.getRoot() != null) {
                cost.getRoot().getChildren().forEach(child -> add(item, child, currency));
            }
            item.setExpanded(true);
        }
        tree.setRedraw(true);
    }

    private static void add(TreeItem parent, CostItem cost, String currency) {
        TreeItem item = new TreeItem(parent, SWT.NONE);
        boolean money = cost.getUnit() == null || cost.getUnit().isBlank();
        item.setText(new String[] { text(cost.getLabel()), Numbers.fixed(cost.getValue(), money ? 2 : 3), money ? currency : cost.getUnit(),
            text(cost.getFormula()), text(cost.getSource()) });
        cost.getChildren().forEach(child -> add(item, child, currency));
    }

    private static String text(String text) {
        return text == null ? "" : text;
    }
}
