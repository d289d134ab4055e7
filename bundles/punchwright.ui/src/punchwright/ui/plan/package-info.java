// SPDX-License-Identifier: EPL-2.0
/**
 * A plan on the screen.
 *
 * <p>Purpose: the engineer sees what the machine will do and why: the sheet with parts, hits and clamps, and beside it tools,
 * operations, times by cause, the ledger and the findings. Input: a plan of the model. Result: pictures and tables; nothing is
 * changed. Way: the picture is built in the background from the plan and the part drawings; numbers in balloons are the same in
 * picture and table; a selection in one selects in the other. Measured by: the workbench test that opens a plan and selects a
 * hit.</p>
 */
package punchwright.ui.plan;
