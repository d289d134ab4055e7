// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.costing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import punchwright.engine.finding.Finding;

/**
 * Collects the cells of a calculation in order; a formula is worked out as it is added, from cells that stand already. Names
 * are compared without regard to case, as spreadsheets do.
 */
public final class CostSheetBuilder {

    /** Longest formula that spreadsheets take is 8192 characters (ISO/IEC 29500-1, 18.17); this leaves a margin. */
    static final int LONGEST_FORMULA = 8000;

    private final String title;
    private final String currency;
    private final Map<String, CostCell> cells = new LinkedHashMap<>();
    private final List<Finding> findings = new ArrayList<>();

    public CostSheetBuilder(String title, String currency) {
        this.title = title;
        this.currency = currency;
    }

    public String currency() {
        return currency;
    }

    /** Adds an input and returns its name. Refuses a name that is taken, is no cell name, or a value that is no number. */
    public String input(String name, String label, String unit, String group, double value, String source) {
        return add(new CostCell(name, label, unit, group, null, value, source));
    }

    /** Adds a formula, works it out and returns its name. Refuses unknown cells and results that are no number. */
    public String formula(String name, String label, String unit, String group, Expression formula, String source) {
        for (String used : formula.references()) {
            if (!has(used)) {
                throw new IllegalArgumentException(
                        "cost cell " + name + " uses " + used + ", which does not stand before it; add " + used + " first");
            }
        }
        if (formula.text().length() > LONGEST_FORMULA) {
            throw new IllegalArgumentException("the formula of cost cell " + name + " has " + formula.text().length()
                    + " characters, a spreadsheet takes " + LONGEST_FORMULA + "; split it with subtotals");
        }
        return add(new CostCell(name, label, unit, group, formula, formula.evaluate(this::value), source));
    }

    /** Whether a cell of this name stands already. */
    public boolean has(String name) {
        return cells.containsKey(key(name));
    }

    /** Value of a cell that must stand already. */
    public double value(String name) {
        CostCell cell = cells.get(key(name));
        if (cell == null) {
            throw new IllegalArgumentException("no cost cell " + name + " in " + title);
        }
        return cell.value();
    }

    /** Adds a finding to the result. */
    public void report(Finding finding) {
        findings.add(finding);
    }

    /** The calculation so far. */
    public CostSheet build() {
        return new CostSheet(title, currency, List.copyOf(cells.values()), findings);
    }

    private String add(CostCell cell) {
        CellNames.check(cell.name());
        if (has(cell.name())) {
            throw new IllegalArgumentException("cost cell " + cell.name() + " stands twice; give one of them another name");
        }
        if (!Double.isFinite(cell.value())) {
            throw new IllegalArgumentException("cost cell " + cell.name() + " (" + cell.label() + ") is " + cell.value()
                    + (cell.isInput() ? "; enter a number" : " by " + cell.formula().text() + "; correct its inputs"));
        }
        cells.put(key(cell.name()), cell);
        return cell.name();
    }

    private static String key(String name) {
        return name.toLowerCase(Locale.ROOT);
    }
}
