// SPDX-License-Identifier: EPL-2.0
/**
 * What all editors share.
 *
 * <p>Purpose: a file of the workspace is edited in one way, whatever is in it. Input: the object at the root of the file. Result:
 * undo, redo, save, revert, dirty mark and title from the file's command stack. Way: a base class of editors; when the last
 * editor of a file is closed without saving, the file goes back to what was saved. Measured by: the workbench test.</p>
 */
package punchwright.ui.editor;
