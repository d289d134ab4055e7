// SPDX-License-Identifier: EPL-2.0
/**
 * The shop: machines, tools, holders, materials, stock, rates.
 *
 * <p>Purpose: the engineer keeps the records true. Input: the library's file. Result: commands on its stack. Way: each kind is
 * data (columns, field groups, lists) in one enumeration; one page class shows any of them as table, picture and form. Measured
 * by: the workbench test (edit, undo, redo, save) and the test that every feature of the model stands in a form.</p>
 */
package punchwright.ui.library;
