// SPDX-License-Identifier: EPL-2.0
/**
 * Forms from field definitions.
 *
 * <p>Purpose: every value of an object can be read and changed, with its unit, by keyboard alone. Input: groups of fields as data
 * (names of the model's features), an object and its file. Result: commands on the file's stack. Way: a control is chosen by the
 * type of the feature; unit and label follow from the name in the model; text is taken over on Enter and when the focus leaves;
 * the rules of the model judge a copy of the object with the value that is being typed, so that the remedy shows before the
 * mistake is made. Measured by: the tests of reading and showing values, of units for every feature, and the workbench test.</p>
 */
package punchwright.ui.form;
