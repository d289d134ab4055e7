// SPDX-License-Identifier: EPL-2.0
/**
 * What an order costs on a machine: every figure a named cell, every result a formula on named cells.
 *
 * <p>Input: {@link punchwright.engine.costing.CostJob} (machine, rates, sheets run, parts, order lines). Result:
 * {@link punchwright.engine.costing.CostSheet}. One entry point: {@link punchwright.engine.costing.OrderCost}.
 * Algorithm: a flat list of cells in order of dependence; a formula is an expression tree that is worked out here and
 * written into a spreadsheet from the same object, so that both cannot drift apart. Cost kinds follow VDI 3258
 * (machine-hour rate) and the differentiated surcharge calculation. Sheets and set-ups that several parts share are shared
 * by area with web (material) and by machine time (time, set-up). Money is rounded to the cent in result cells only, and
 * totals add the rounded parts, so that parts add up as printed.
 * Measured by: published worked examples to the printed cent, and the workbook recalculated by another program.
 */
package punchwright.engine.costing;
