// SPDX-License-Identifier: EPL-2.0
/**
 * Commands of menu, tool bar and keys.
 *
 * <p>Purpose: everything the window can do has a command, so that a key can be bound to it. Input: the active part and its
 * selection. Result: a job or an editor; a sentence when something is missing first. Way: one small handler each, no state.
 * Measured by: the workbench test.</p>
 */
package punchwright.ui.command;
