// SPDX-License-Identifier: EPL-2.0
/** The sheets of the cost roll-up workbook: figures of plans as named cells and formulas on them. */
package punchwright.sheets.cost;
