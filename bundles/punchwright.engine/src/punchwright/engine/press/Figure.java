// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import java.util.Locale;

/**
 * A number that tells how it was made.
 *
 * @param key      what it is; texts in {@code questions.properties} under {@code figure.KEY}
 * @param symbol   its letter in formulas of the same answer
 * @param value    the number, in the unit used inside
 * @param quantity its kind and units
 * @param formula  how it follows from the symbols of inputs and figures before it: {@code + - * / ^}, brackets, {@code sqrt,
 *                 min, max, ceil, floor, sin, cos, tan, asin, acos, pi}; angles in degrees; empty for a table value
 * @param source   where formula or table come from
 * @param step     whether it is only on the way to a result
 */
public record Figure(String key, String symbol, double value, Quantity quantity, String formula, Source source, boolean step) {

    /** What it is, for a person. */
    public String name(Locale locale) {
        return Words.of("figure." + key, locale);
    }
}
