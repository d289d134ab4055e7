// SPDX-License-Identifier: EPL-2.0
/**
 * What is open.
 *
 * <p>Purpose: one place that knows the open workspace and the state of its files. Input: a workspace that was loaded in the
 * background. Result: one command stack for each file, shared by all editors of the file; undo, redo, dirty state, save, revert.
 * Way: EMF command stacks over the model's own loading and saving; nothing here writes to disk by itself. All on the UI thread;
 * whoever works in the background opens the folder for reading by itself. Measured by: the workbench test that edits, undoes,
 * redoes, saves and reverts.</p>
 */
package punchwright.ui.session;
