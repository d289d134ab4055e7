// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.costing;

/**
 * One named figure of a cost calculation: an input or a formula on other cells. The same name is the cell's name in
 * the workbook.
 *
 * @param name      unique, letters, digits and underscore, valid as a spreadsheet name (never like a cell address)
 * @param label     what a person reads
 * @param unit      unit of the value ("EUR", "s", "EUR/h", "pcs")
 * @param group     heading it stands under
 * @param formula   null for an input
 * @param value     value in the unit
 * @param source    where an input comes from, or the source of a formula
 */
public record CostCell(String name, String label, String unit, String group, Formula formula, double value, String source) {

    public boolean isInput() {
        return formula == null;
    }
}
