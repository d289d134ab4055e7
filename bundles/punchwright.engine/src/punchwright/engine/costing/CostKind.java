// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.costing;

import java.util.List;

/**
 * Kinds of cost in the order of the roll-up, and the names of the result cells. {@code MATERIAL} to {@code SECONDARY} are direct
 * costs; overheads are the sum of the four surcharges; {@code TOTAL} is the sum of all before it.
 */
public enum CostKind {
    MATERIAL, PURCHASED, MACHINE, LABOUR, SET_UP, TOOL_WEAR, CONSUMABLES, SECONDARY, OVERHEADS, TOTAL, PROFIT, PRICE;

    /** The kinds that add up to the total. */
    public static List<CostKind> parts() {
        return List.of(values()).subList(0, TOTAL.ordinal());
    }

    /** Kinds before surcharges. */
    public static List<CostKind> direct() {
        return List.of(values()).subList(0, OVERHEADS.ordinal());
    }

    /** Word used in cell names. */
    public String word() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }

    /** Name of the cell with this cost of the whole lot of a line (lines count from 1). */
    public String lotCell(String code, int line) {
        return CellNames.of(code, "M", "L" + line, word(), "lot");
    }

    /** Name of the cell with this cost per piece of a line. */
    public String pieceCell(String code, int line) {
        return CellNames.of(code, "M", "L" + line, word(), "piece");
    }

    /** Name of the cell with this cost of the whole order. */
    public String orderCell(String code) {
        return CellNames.of(code, "M", "order", word());
    }
}
