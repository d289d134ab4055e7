// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import java.util.List;
import java.util.Locale;

import punchwright.engine.finding.Finding;

/**
 * A number that a question takes.
 *
 * @param name     as typed on a command line; text in {@code questions.properties} under {@code input.NAME}
 * @param symbol   its letter in formulas
 * @param quantity its kind and units
 * @param least    end of the range in which the formulas hold, in the unit used inside
 * @param largest  other end of that range
 * @param usual    taken when nothing is given; NaN where it must be given or come from the material
 * @param from     which property of the material gives it
 */
public record Input(String name, String symbol, Quantity quantity, double least, double largest, double usual, From from) {

    /** Where a value comes from when it is not typed. */
    public enum From {
        NOWHERE, SHEAR, TENSILE, CLEARANCE_PERCENT, HOLE_FACTOR, LIFE_FACTOR
    }

    static Input needed(String name, String symbol, Quantity quantity, double least, double largest) {
        return new Input(name, symbol, quantity, least, largest, Double.NaN, From.NOWHERE);
    }

    Input usually(double value) {
        return new Input(name, symbol, quantity, least, largest, value, from);
    }

    Input from(From property) {
        return new Input(name, symbol, quantity, least, largest, usual, property);
    }

    /** Whether 0 makes sense. */
    public boolean zeroAllowed() {
        return least <= 0 || usual == 0;
    }

    /** Whether it must be given unless the material supplies it. */
    public boolean required() {
        return Double.isNaN(usual);
    }

    /** What it is, for a person. */
    public String label(Locale locale) {
        return Words.of("input." + name, locale);
    }

    /** What stands for it when nothing is given, in the unit used inside; NaN where it must be given. */
    public double standsFor(Basis basis) {
        return basis.value(this).orElse(Double.NaN);
    }

    /** Refuses what makes no sense at all. */
    void refuseNonsense(String question, double value) {
        if (!Double.isFinite(value) || value < 0 || value == 0 && !zeroAllowed()) {
            throw QuestionException.of(PressReason.SENSELESS, question + ", " + name, symbol, String.valueOf(value),
                    zeroAllowed() ? 1 : 0);
        }
        if (quantity == Quantity.COUNT && value != Math.rint(value)) {
            throw QuestionException.of(PressReason.NOT_WHOLE, question + ", " + name, symbol, value);
        }
    }

    /** A warning where the value lies outside the range of the formulas. */
    List<Finding> check(String question, double value) {
        boolean inside = value >= least - 1e-9 * Math.abs(least) && value <= largest + 1e-9 * Math.abs(largest);
        return inside ? List.of()
                : List.of(Finding.of(PressReason.RANGE, question, symbol, value, quantity.sign(), least, largest, question));
    }
}
