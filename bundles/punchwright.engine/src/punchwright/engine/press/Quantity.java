// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import java.util.List;

/**
 * Kind of a number with the units in which a person may give or read it. The first unit is the one used inside.
 *
 * <p>Source of the factors: International System of Units (NIST SP 811, appendix B): 1 in = 25.4 mm, 1 tonne-force = 9806.65 N,
 * 1 ksi = 6.894757 MPa.
 */
public enum Quantity {
    LENGTH(unit("mm", 1), unit("in", 25.4)),
    AREA(unit("mm2", 1), unit("in2", 645.16)),
    FORCE(unit("N", 1), unit("kN", 1000), unit("t", 9806.65)),
    STRESS(unit("MPa", 1), unit("N/mm2", 1), unit("ksi", 6.894757)),
    ANGLE(unit("deg", 1)),
    WORK(unit("J", 1)),
    POWER(unit("W", 1), unit("kW", 1000)),
    MOMENT(unit("Nm", 1)),
    PERCENT(unit("%", 1)),
    SHARE(unit("", 1)),
    COUNT(unit("", 1)),
    RATE(unit("1/min", 1)),
    MONEY(unit("", 1));

    private final List<Unit> units;

    Quantity(Unit... units) {
        this.units = List.of(units);
    }

    /**
     * @param sign   as written behind a number
     * @param factor how many of the unit used inside it is
     */
    public record Unit(String sign, double factor) {
    }

    private static Unit unit(String sign, double factor) {
        return new Unit(sign, factor);
    }

    /** All units, the one used inside first. */
    public List<Unit> units() {
        return units;
    }

    /** Sign of the unit used inside; empty for plain numbers. */
    public String sign() {
        return units.getFirst().sign();
    }

    /**
     * Reads a number with or without a unit: {@code 2}, {@code 2mm}, {@code 0.08 in}.
     *
     * @return the value in the unit used inside
     * @throws IllegalArgumentException when it is no finite number or the unit does not belong to this quantity
     */
    public double read(String typed) {
        String text = typed.strip();
        for (Unit u : units) {
            if (!u.sign().isEmpty() && text.endsWith(u.sign()) && number(text, u)) {
                return value(text.substring(0, text.length() - u.sign().length()), typed) * u.factor();
            }
        }
        return value(text, typed);
    }

    /** Whether what stands before the unit's sign is a number, so that "2kN" is not read as 2k of N. */
    private static boolean number(String text, Unit u) {
        String before = text.substring(0, text.length() - u.sign().length()).strip();
        return !before.isEmpty() && (Character.isDigit(before.charAt(before.length() - 1)) || before.endsWith("."));
    }

    private double value(String text, String typed) {
        try {
            double value = Double.parseDouble(text.strip());
            if (Double.isFinite(value) && text.strip().matches("[-+0-9.eE]+")) {
                return value;
            }
        } catch (NumberFormatException e) {
            // told below, with the units that would do
        }
        String signs = String.join(", ", units.stream().map(Unit::sign).filter(s -> !s.isEmpty()).toList());
        throw new IllegalArgumentException("'" + typed + "' is no number" + (signs.isEmpty() ? "" : " in " + signs));
    }
}
