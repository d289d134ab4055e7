// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

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

/**
 * The ledger: the cost of each line and lot as a tree. Every figure opens to what it is made of, down to the inputs, with its
 * formula and the source it comes from. Branches are filled when they are opened, since a figure may be used in many places.
 */
final class LedgerTree {

    private static final String[] COLUMNS = { "col.costItem 300", "col.value 110", "col.unit 60", "col.formula 260",
            "col.source 280" };

    private final Tree tree;
    private final Map<String, CostItem> figures = new LinkedHashMap<>();
    private String currency = "";

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
        tree.addListener(SWT.Expand, e -> fill((TreeItem) e.item));
    }

    Tree control() {
        return tree;
    }

    void show(Plan plan, String money) {
        currency = money;
        figures.clear();
        plan.getFigures().forEach(figure -> figures.put(figure.getKey(), figure));
        tree.setRedraw(false);
        tree.removeAll();
        for (LotCost cost : plan.getCosts()) {
            TreeItem item = new TreeItem(tree, SWT.NONE);
            String name = cost.getLine() == null || cost.getLine().getItem() == null ? "" : cost.getLine().getItem().getName();
            item.setText(new String[] { Texts.of("plan.lot", name, cost.getQuantity()),
                    Numbers.fixed(cost.getTotal(), 2), currency,
                Texts.of("plan.perPiece", Numbers.fixed(cost.getPerPiece(), 2), currency), "" });
            if (cost.getRoot() != null) {
                parts(cost.getRoot()).forEach(child -> add(item, child));
            }
            item.setExpanded(true);
        }
        tree.setRedraw(true);
    }

    private void add(TreeItem parent, CostItem cost) {
        TreeItem item = new TreeItem(parent, SWT.NONE);
        boolean money = cost.getUnit() == null || cost.getUnit().isBlank() || cost.getUnit().equals(currency);
        item.setText(new String[] { text(cost.getLabel()), money ? Numbers.fixed(cost.getValue(), 2)
                : Numbers.plain(rounded(cost.getValue())),
            money ? currency : cost.getUnit(), text(cost.getFormula()), text(cost.getSource()) });
        item.setData(cost);
        if (!parts(cost).isEmpty()) {
            new TreeItem(item, SWT.NONE);
        }
    }

    private void fill(TreeItem item) {
        if (item.getItemCount() == 1 && item.getItem(0).getData() == null && item.getData() instanceof CostItem cost) {
            item.getItem(0).dispose();
            parts(cost).forEach(part -> add(item, part));
        }
    }

    /** What a figure is made of: its children, else the figures its formula uses. */
    private List<CostItem> parts(CostItem cost) {
        if (!cost.getChildren().isEmpty()) {
            return cost.getChildren();
        }
        List<CostItem> parts = new ArrayList<>();
        CostItem figure = figures.getOrDefault(cost.getKey(), cost);
        List<String> inputs = figure.getInputs().isEmpty() ? cost.getInputs() : figure.getInputs();
        inputs.stream().map(figures::get).filter(Objects::nonNull).filter(f -> f != figure).forEach(parts::add);
        return parts;
    }

    private static double rounded(double value) {
        return Math.round(value * 1e4) / 1e4;
    }

    private static String text(String text) {
        return text == null ? "" : text;
    }
}
