// SPDX-License-Identifier: EPL-2.0
/**
 * Findings.
 *
 * <p>Purpose: nothing that is wrong stays unseen, and each finding leads to its place. Input: problems of files, verdicts of the
 * model's rules, findings of plans. Result: one table; severity by shape (octagon, triangle, circle) and word, colour last. Way:
 * collected anew when the hand rests after a change. Measured by: the workbench test that breaks a value and finds the
 * finding.</p>
 */
package punchwright.ui.findings;
