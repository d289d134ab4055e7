// SPDX-License-Identifier: EPL-2.0
/**
 * Spreadsheets for the floor and for management, written with Apache POI; no display is needed.
 *
 * <p>Input: plans of the model, the outlines of their parts, a language, a file. Result: a workbook. Entry points:
 * {@link punchwright.sheets.ProcessSheetWriter} (one plan) and {@link punchwright.sheets.CostRollupWriter} (one order with every
 * plan that makes it). The roll-up carries no pasted numbers but inputs: each figure of the plan becomes a named cell, each
 * result a formula on named cells; POI works all formulas out and every result is compared with the plan's value before the
 * file is written. Files are written beside and renamed, with fixed dates and a fixed order of parts, so that the same plan
 * gives the same bytes. Measured by: read back with POI, recalculated by another spreadsheet program, and looked at as
 * printed pages.
 */
package punchwright.sheets;
