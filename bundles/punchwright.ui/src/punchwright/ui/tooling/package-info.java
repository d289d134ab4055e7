// SPDX-License-Identifier: EPL-2.0
/**
 * The choice of tools on the screen.
 *
 * <p>Purpose: the engineer sees what makes each feature of a part, what it was chosen from and why everything else was passed
 * over, says what he wants instead, and sees at once what that costs. Input: a part and a machine of the model. Result: the table
 * of operations with the part's picture, alternatives side by side, reasons, wishes kept with the part, the loading of each place
 * as a picture, advice which tool to buy. Way: the planner's own weighing, run beside the window on a copy of part and library;
 * the result without and with wishes is compared line by line; every wish is a command on the part's stack. Measured by: the
 * workbench tests that pin and forbid tools and look at choice, difference, reason and undo.</p>
 */
package punchwright.ui.tooling;
