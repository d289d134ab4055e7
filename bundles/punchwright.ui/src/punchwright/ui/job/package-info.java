// SPDX-License-Identifier: EPL-2.0
/**
 * Long work beside the window.
 *
 * <p>Purpose: opening, planning, exporting and importing never hold the window up. Input: what is asked for, by record
 * identifiers. Result: handed over on the UI thread, or one message. Way: jobs with progress and cancel that open the folder for
 * reading by themselves and call the operations that the command line calls too; what they make is brought into the open
 * workspace on the UI thread. Measured by: the workbench test that plans an order and cancels another.</p>
 */
package punchwright.ui.job;
