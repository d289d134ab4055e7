// SPDX-License-Identifier: EPL-2.0
/** The sheets of the process sheet workbook, one class each. */
package punchwright.sheets.process;
