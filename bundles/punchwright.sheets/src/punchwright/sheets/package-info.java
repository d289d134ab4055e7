// SPDX-License-Identifier: EPL-2.0
/** Writes the process sheet and the cost roll-up as spreadsheets. */
package punchwright.sheets;
