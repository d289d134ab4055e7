// SPDX-License-Identifier: EPL-2.0
/**
 * Native tables from column definitions.
 *
 * <p>Purpose: every list of the workbench looks and works alike: sort by header, filter by words, copy as tab text. Input:
 * columns as data (header key, width, alignment, text, sort value) and rows. Result: a native virtual table, which a screen
 * reader reads by itself. Way: the rows that pass the filter are kept in a list in order; the widget asks for cells only when
 * they come into sight, so that ten thousand rows cost no more than a screenful. Measured by: the table tests (order, filter,
 * copy, selection kept).</p>
 */
package punchwright.ui.table;
