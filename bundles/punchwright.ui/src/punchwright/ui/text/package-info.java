// SPDX-License-Identifier: EPL-2.0
/**
 * Visible texts and figures.
 *
 * <p>Purpose: every word and figure that a person reads goes through here, so that language and decimal sign are decided in one
 * place. Input: keys, literals and features of the model, values. Result: text in the language of the user. Way: two properties
 * files with equal keys; labels of fields and literals are found by the name in the model, so that a new field shows up as a
 * missing key in a test and not as a hole in a screen. Measured by: the test that compares keys and placeholders of both
 * languages and asks for each feature and literal of the model.</p>
 */
package punchwright.ui.text;
