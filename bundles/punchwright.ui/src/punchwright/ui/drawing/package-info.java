// SPDX-License-Identifier: EPL-2.0
/**
 * Drawings into parts, on the screen.
 *
 * <p>Purpose: a person drops a folder of customer files, sees what each shows and what is wrong with it, decides unit and
 * layers, and has parts and an order at the end. Input: files, the layer rules and materials of the shop. Result: one change
 * of the workspace that can be undone. Way: {@link punchwright.ui.drawing.Intake} holds the state without a widget and reads
 * beside the window; three pages of a wizard show it; the planner's intake writes, all or nothing. The picture is the sheet
 * canvas with a drawing's scene, findings are numbered in picture and table alike. Measured by: the test that drives the
 * wizard through a folder of good, many-part, open and broken files.</p>
 */
package punchwright.ui.drawing;
