// SPDX-License-Identifier: EPL-2.0
/**
 * Names and units of the model for people.
 *
 * <p>Purpose: one place that says how a class, a feature, an enumeration literal and an object are called in English and German
 * and in which unit a feature is kept; messages, forms, tables and spreadsheets all ask here. Input: Ecore elements and
 * objects. Result: text. The unit is derived from the feature's name, which carries it ({@code throatDepthMm}). The generator
 * makes the item providers' property files from the same texts. Measured by: a test that every class, feature and literal has a
 * name in both languages.</p>
 */
package punchwright.model.names;
