// SPDX-License-Identifier: EPL-2.0
/**
 * Drawings into parts of the workspace.
 *
 * <p>Purpose: a folder of customer files becomes parts, each with its own shape, or a clear reason. Input: DXF files, how
 * each is to be read, and the layer rules of the shop. Result: {@link punchwright.planner.intake.DrawingReading} for each
 * file; then the records that {@link punchwright.planner.intake.TakeIn} puts into the workspace, all of them or none.
 *
 * <p>Way: a drawing is surveyed, equal parts are counted together (turned and mirrored as well), and each distinct part is told
 * apart by a place in its material. Copies of drawings are staged beside their folder and moved in when all are there;
 * records are written one by one and taken back when one fails or the person cancels. Only the model's own writing touches
 * the workspace's files.
 *
 * <p>Measured by: a folder of good, many-part, open and broken drawings gives the parts counted by hand; a failure leaves the
 * folder as it was.
 */
package punchwright.planner.intake;
