// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.text;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.text.NumberFormat;
import java.text.ParsePosition;
import java.util.Locale;
import java.util.OptionalDouble;

/** Figures as people read and type them: decimal sign by language, fixed decimals in columns, short in fields. */
public final class Numbers {

    private static final double SECONDS_PER_MINUTE = 60;

    private Numbers() {
    }

    /** A figure with a fixed number of decimals, with grouping. */
    public static String fixed(double value, int decimals) {
        NumberFormat format = NumberFormat.getNumberInstance(Locale.getDefault());
        format.setMinimumFractionDigits(decimals);
        format.setMaximumFractionDigits(decimals);
        String text = format.format(value);
        return isNegativeZero(text) ? text.substring(1) : text;
    }

    private static boolean isNegativeZero(String text) {
        return text.startsWith("-") && text.chars().skip(1).allMatch(c -> c == '0' || !Character.isDigit(c));
    }

    /** A figure with as many decimals as it needs, at most six, without grouping: what a field shows. */
    public static String plain(double value) {
        DecimalFormat format = new DecimalFormat("0.######", DecimalFormatSymbols.getInstance(Locale.getDefault()));
        return format.format(value);
    }

    /** Reads what a person typed; point and the language's decimal sign are both taken; empty for anything else. */
    public static OptionalDouble parse(String typed) {
        String text = typed.strip();
        char sign = DecimalFormatSymbols.getInstance(Locale.getDefault()).getDecimalSeparator();
        text = text.replace(sign, '.').replace("\u00a0", "").replace(" ", "");
        if (!text.matches("[-+]?(\\d+\\.?\\d*|\\.\\d+)")) {
            return OptionalDouble.empty();
        }
        DecimalFormat format = new DecimalFormat("0.#", DecimalFormatSymbols.getInstance(Locale.ROOT));
        ParsePosition position = new ParsePosition(0);
        Number number = format.parse(text.startsWith("+") ? text.substring(1) : text, position);
        return number == null ? OptionalDouble.empty() : OptionalDouble.of(number.doubleValue());
    }

    /** A time as minutes and seconds from one minute on, else as seconds: "4:05 min", "7.3 s". */
    public static String time(double seconds) {
        if (seconds < SECONDS_PER_MINUTE) {
            return fixed(seconds, 1) + " s";
        }
        long whole = Math.round(seconds);
        return whole / 60 + ":" + String.format(Locale.ROOT, "%02d", whole % 60) + " min";
    }
}
