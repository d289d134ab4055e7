// SPDX-License-Identifier: EPL-2.0
/**
 * Parts on the screen.
 *
 * <p>Purpose: the engineer sees what a drawing or a set of parameters makes, and what is wrong with it. Input: a part of the
 * model and the drawings of the workspace. Result: contours, area, edge length, or the reason why it cannot be read. Way: the
 * planner's own reader, run beside the window on a copy, so that the picture is what the plan will use. Measured by: the
 * workbench test that opens a part.</p>
 */
package punchwright.ui.part;
