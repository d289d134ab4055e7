// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.costing;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Is a purchase worth it: net present value [money] and time until it has paid [years].
 *
 * <p>Formula: {@code NPV = -I + sum C_t / (1 + r)^t}, cash flows C at the end of each year; rate r as a fraction. Payback
 * interpolates in the year in which the sum of (discounted) cash flows turns positive; with r = 0 it is the static payback.
 * The closed form for equal cash flows is {@code n = -ln(1 - I r / C) / ln(1 + r)}. Empty where it never pays. Source: any
 * text on capital budgeting; worked answers in the tests.
 */
public final class PresentValue {

    private PresentValue() {
    }

    public static double net(double investment, List<Double> cashFlows, double rate) {
        double value = -investment;
        for (int year = 1; year <= cashFlows.size(); year++) {
            value += discounted(cashFlows.get(year - 1), rate, year);
        }
        return value;
    }

    /** Years until the purchase has paid, interpolated within the year. */
    public static OptionalDouble payback(double investment, List<Double> cashFlows, double rate) {
        double open = investment;
        for (int year = 1; year <= cashFlows.size(); year++) {
            double back = discounted(cashFlows.get(year - 1), rate, year);
            if (back >= open) {
                return OptionalDouble.of(open <= 0 ? year - 1 : year - 1 + open / back);
            }
            open -= back;
        }
        return OptionalDouble.empty();
    }

    /** Years until equal yearly cash flows have paid the purchase, by the closed form; rate above 0. */
    public static OptionalDouble paybackOfEqualFlows(double investment, double cashFlow, double rate) {
        double rest = 1 - investment * rate / cashFlow;
        return rate > 0 && cashFlow > 0 && rest > 0 ? OptionalDouble.of(-Math.log(rest) / Math.log1p(rate))
                : OptionalDouble.empty();
    }

    private static double discounted(double cashFlow, double rate, int year) {
        if (!(rate > -1)) {
            throw new IllegalArgumentException("discount rate is " + rate + "; it must be above -1, as 0.08 for 8 % a year");
        }
        return cashFlow / Math.pow(1 + rate, year);
    }
}
