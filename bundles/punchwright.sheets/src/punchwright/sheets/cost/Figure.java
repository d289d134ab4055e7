// SPDX-License-Identifier: EPL-2.0
package punchwright.sheets.cost;

import punchwright.model.plan.CostItem;

/**
 * One figure as it will stand in the workbook.
 *
 * @param machine name of the machine it belongs to; empty when all plans share it or there is only one plan
 */
record Figure(String key, String label, String section, String heading, String machine, String unit, double value, String formula,
        String source) {

    static Figure of(CostItem item, String machine) {
        String path = item.getHeading() == null ? "" : item.getHeading();
        int cut = path.indexOf(" > ");
        return new Figure(item.getKey(), text(item.getLabel()), cut < 0 ? path : path.substring(0, cut),
                cut < 0 ? "" : path.substring(cut + 3), machine, text(item.getUnit()), item.getValue(), text(item.getFormula()),
                text(item.getSource()));
    }

    boolean input() {
        return formula.isEmpty();
    }

    Figure shared() {
        return new Figure(key, label, section, heading, "", unit, value, formula, source);
    }

    /** Heading in the workbook: with the machine where several stand side by side. */
    String title() {
        return machine.isEmpty() || heading.equals(machine) ? heading : machine + ": " + heading;
    }

    private static String text(String text) {
        return text == null ? "" : text;
    }
}
