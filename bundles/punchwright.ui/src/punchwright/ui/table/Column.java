// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.table;

import java.util.function.Function;

import org.eclipse.swt.SWT;

import punchwright.ui.text.Numbers;
import punchwright.ui.text.Texts;

/**
 * One column of a table, as data.
 *
 * @param header what the header says, with the unit
 * @param width  first width in pixels at 100 %
 * @param align  {@link SWT#LEFT} or {@link SWT#RIGHT}
 * @param text   what the cell shows
 * @param order  what the column sorts by
 * @param <T>    the row
 */
public record Column<T>(String header, int width, int align, Function<T, String> text, Function<T, Comparable<?>> order) {

    /** The same under another header. */
    public Column<T> called(String other) {
        return new Column<>(other, width, align, text, order);
    }

    /** A column of words. */
    public static <T> Column<T> text(String key, int width, Function<T, String> text) {
        return new Column<>(Texts.of(key), width, SWT.LEFT, row -> orEmpty(text.apply(row)), row -> orEmpty(text.apply(row)));
    }

    /** A column of figures with fixed decimals, aligned at the decimal sign. */
    public static <T> Column<T> number(String key, int width, int decimals, Function<T, Double> value) {
        return new Column<>(Texts.of(key), width, SWT.RIGHT, row -> show(value.apply(row), decimals), row -> value.apply(row));
    }

    /** A column of whole figures. */
    public static <T> Column<T> count(String key, int width, Function<T, Integer> value) {
        return number(key, width, 0, row -> value.apply(row) == null ? null : value.apply(row).doubleValue());
    }

    private static String show(Double value, int decimals) {
        return value == null ? "" : Numbers.fixed(value, decimals);
    }

    private static String orEmpty(String text) {
        return text == null ? "" : text;
    }
}
