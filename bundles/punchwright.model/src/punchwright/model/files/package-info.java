// SPDX-License-Identifier: EPL-2.0
/**
 * The workspace: a folder of text files that holds everything the engineer keeps.
 *
 * <p>Purpose: load, migrate and save the model without ever losing a good file. Input: a folder with library.pwlib,
 * parts/*.pwpart, orders/*.pworder, plans/*.pwplan and drawings/. Result: model objects in one resource set; on failure one
 * {@link punchwright.model.files.WorkspaceException} that names the file, the cause and the way out.</p>
 *
 * <p>How and why: a file is serialised to memory first, so that an object that cannot be written never touches the disk; then
 * it is written beside, forced to the disk and renamed, while the last good copy stays as .bak. The format version stands in a
 * processing instruction, which can be read before any object is made. Older formats are migrated on the XML tree, one step a
 * version. References between files are relative, are resolved inside the folder only, and XML with a document type declaration
 * is refused. One program at a time writes: a lock on the file .lock says so, and a digest of what was read notices changes by
 * other hands.</p>
 *
 * <p>Measured by: tests with truncated, binary, newer, foreign and changed files, a full disk and a read-only folder.</p>
 */
package punchwright.model.files;
