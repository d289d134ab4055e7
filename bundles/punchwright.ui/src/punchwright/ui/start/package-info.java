// SPDX-License-Identifier: EPL-2.0
/**
 * The first page.
 *
 * <p>Purpose: whoever starts without a workspace sees how to begin: the demo in one click, a folder, a new one, a recent one.
 * Input: the list of recent folders, the demo beside the program. Result: an open workspace. Way: an editor without a file.
 * Measured by: the workbench test that starts without a workspace.</p>
 */
package punchwright.ui.start;
