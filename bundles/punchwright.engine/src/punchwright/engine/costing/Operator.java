// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.costing;

import java.util.function.DoubleBinaryOperator;

/** Operators of formulas; a comparison gives 1 for true and 0 for false. */
enum Operator {
    PLUS("+", 2, (a, b) -> a + b),
    MINUS("-", 2, (a, b) -> a - b),
    TIMES("*", 3, (a, b) -> a * b),
    DIVIDE("/", 3, (a, b) -> a / b),
    GREATER(">", 1, (a, b) -> a > b ? 1 : 0),
    EQUAL("=", 1, (a, b) -> a == b ? 1 : 0);

    private final String sign;
    private final int strength;
    private final DoubleBinaryOperator work;

    Operator(String sign, int strength, DoubleBinaryOperator work) {
        this.sign = sign;
        this.strength = strength;
        this.work = work;
    }

    String sign() {
        return sign;
    }

    int strength() {
        return strength;
    }

    double apply(double a, double b) {
        return work.applyAsDouble(a, b);
    }
}
