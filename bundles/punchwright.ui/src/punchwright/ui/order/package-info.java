// SPDX-License-Identifier: EPL-2.0
/**
 * Orders on the screen.
 *
 * <p>Purpose: the engineer sees what is wanted and which machine makes it cheapest. Input: an order of the model. Result:
 * commands on its file; plans and spreadsheets through the background jobs. Way: a form with the lines above, one line for each
 * machine in use below, with what its kept plan says. Measured by: the workbench test that plans an order.</p>
 */
package punchwright.ui.order;
