// SPDX-License-Identifier: EPL-2.0
/**
 * The explorer.
 *
 * <p>Purpose: everything in the workspace folder is two clicks away. Input: the open session. Result: a native tree by places,
 * with the state of each file; opening goes to the editor or, for workbooks, to the system's program. Way: nodes are made anew on
 * every change and told apart by key, so that the tree stays open; plans are listed without being read. Measured by: the
 * workbench test.</p>
 */
package punchwright.ui.explorer;
