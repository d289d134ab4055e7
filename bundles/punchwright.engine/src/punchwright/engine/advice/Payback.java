// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.advice;

/**
 * Static payback: years until a purchase has flowed back.
 *
 * <p>Formula: {@code n = price / (saving + depreciation)}. Depreciation is a cost without payment, so it is added back to a
 * saving from which it was taken off. Range: price at least 0. Infinite where nothing flows back; 0 for a price of 0. Warning:
 * no interest, no life: a tool that wears out before its payback never pays. Worked example: price 100 000, profit 60 000 after
 * a depreciation of 20 000: 1.25 years. Source: any text on capital budgeting ("net cash inflow is net income plus
 * depreciation"); worked answers in the tests.
 */
public final class Payback {

    private Payback() {
    }

    public static double years(double price, double savingPerYear, double depreciationPerYear) {
        if (!(price >= 0)) {
            throw new IllegalArgumentException("the price is " + price + "; it must be at least 0");
        }
        double back = savingPerYear + depreciationPerYear;
        return price == 0 ? 0 : back > 0 ? price / back : Double.POSITIVE_INFINITY;
    }
}
