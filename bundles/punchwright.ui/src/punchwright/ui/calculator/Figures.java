// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.calculator;

import java.math.BigDecimal;
import java.math.MathContext;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import java.util.Map;

import punchwright.engine.press.Quantity;

/** Numbers of answers as a person reads them: six figures that count, the language's decimal sign, in the unit chosen. */
final class Figures {

    private static final MathContext SIX = new MathContext(6);

    private Figures() {
    }

    static String text(double value) {
        DecimalFormat format = new DecimalFormat("0.##########", DecimalFormatSymbols.getInstance(Locale.getDefault()));
        return format.format(new BigDecimal(value).round(SIX));
    }

    /** With its unit, the one chosen for its quantity if there is one; lengths to 0.0001 mm or 0.00001 in. */
    static String text(double value, Quantity quantity, Map<Quantity, Quantity.Unit> chosen) {
        Quantity.Unit unit = chosen.getOrDefault(quantity, quantity.units().getFirst());
        double shown = value / unit.factor();
        double fine = unit.factor() == 1 ? 1e4 : 1e5;
        boolean rounds = quantity == Quantity.LENGTH && Math.abs(shown) > 10 / fine;
        return (text(rounds ? Math.rint(shown * fine) / fine : shown) + " " + unit.sign()).strip();
    }
}
