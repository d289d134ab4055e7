// SPDX-License-Identifier: EPL-2.0
/**
 * Commands on the model that a window and a command line share.
 *
 * <p>Purpose: change model objects so that every change can be undone. Input: model objects and the editing domain of their
 * workspace ({@link punchwright.model.edit.ModelEditing}). Result: EMF commands ({@link punchwright.model.edit.Edits}) for the
 * domain's one command stack. No user interface. The item providers beside it are generated; their labels are written from the
 * model's names.</p>
 *
 * <p>How and why: a command that would change nothing cannot be executed, so that it never fills the undo list; an object that
 * is used elsewhere is not removed, since references that lead nowhere surface only at the next planning. Measured by: execute,
 * undo and redo of each command compared object by object.</p>
 */
package punchwright.model.edit;
