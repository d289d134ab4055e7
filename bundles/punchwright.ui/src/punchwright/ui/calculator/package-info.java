// SPDX-License-Identifier: EPL-2.0
/**
 * The calculator: the questions that come by telephone.
 *
 * <p>Purpose: choose a question of the press, type values with units, and read the answer with formula, source and findings
 * while typing. Input: the questions of the engine ({@link punchwright.engine.press.Calculation}), materials, machines and
 * holders of the open workspace. Result: text on the screen, and the same text for the clipboard. Way: fields are made from the
 * question's inputs, so a new question of the engine appears by itself; every change works the answer out anew, which takes
 * well under a millisecond. Measured by: a test in the real window that types values, reads answers against published values,
 * changes units, compares with a place and copies.</p>
 */
package punchwright.ui.calculator;
