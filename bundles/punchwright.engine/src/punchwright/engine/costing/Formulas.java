// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.costing;

import java.util.ArrayList;
import java.util.List;

/** Makes formulas: {@code mul(ref("hours"), ref("rate"))} is worked out as a number and written as {@code hours*rate}. */
public final class Formulas {

    private static final int CHUNK = 100;

    private Formulas() {
    }

    /** The value of a named cell. */
    public static Expression ref(String name) {
        return new Expression.Ref(name);
    }

    /** A constant of the formula, as 60 min/h. Values that a shop may change are inputs, not constants. */
    public static Expression num(double value) {
        return new Expression.Num(value);
    }

    /** First plus the others. */
    public static Expression add(Expression first, Expression... others) {
        return chain(Operator.PLUS, first, others);
    }

    /** First less the others. */
    public static Expression sub(Expression first, Expression... others) {
        return chain(Operator.MINUS, first, others);
    }

    /** Product. */
    public static Expression mul(Expression first, Expression... others) {
        return chain(Operator.TIMES, first, others);
    }

    /** Quotient. */
    public static Expression div(Expression first, Expression second) {
        return new Expression.Binary(Operator.DIVIDE, first, second);
    }

    /** A value in per cent as a factor: {@code value/100}. */
    public static Expression percent(Expression value) {
        return div(value, num(100));
    }

    /** Sum of any number of terms; 0 for none. */
    public static Expression sum(List<? extends Expression> terms) {
        if (terms.isEmpty()) {
            return num(0);
        }
        if (terms.size() <= CHUNK) {
            return terms.size() == 1 ? terms.get(0) : call(Function.SUM, List.copyOf(terms));
        }
        List<Expression> parts = new ArrayList<>();
        for (int from = 0; from < terms.size(); from += CHUNK) {
            parts.add(sum(terms.subList(from, Math.min(terms.size(), from + CHUNK))));
        }
        return sum(parts);
    }

    /** Sum of named cells. */
    public static Expression sumOf(List<String> names) {
        return sum(names.stream().map(Formulas::ref).toList());
    }

    /** Smaller of two. */
    public static Expression min(Expression a, Expression b) {
        return call(Function.MIN, List.of(a, b));
    }

    /** Larger of two. */
    public static Expression max(Expression a, Expression b) {
        return call(Function.MAX, List.of(a, b));
    }

    /** Rounded half away from zero to so many decimals. */
    public static Expression round(Expression value, int decimals) {
        return call(Function.ROUND, List.of(value, num(decimals)));
    }

    /** Rounded away from zero to so many decimals. */
    public static Expression roundUp(Expression value, int decimals) {
        return call(Function.ROUNDUP, List.of(value, num(decimals)));
    }

    /** Rounded up to a multiple of {@code step} (above 0). */
    public static Expression ceiling(Expression value, Expression step) {
        return call(Function.CEILING, List.of(value, step));
    }

    /** Square root. */
    public static Expression sqrt(Expression value) {
        return call(Function.SQRT, List.of(value));
    }

    /** Power. */
    public static Expression power(Expression base, Expression exponent) {
        return call(Function.POWER, List.of(base, exponent));
    }

    /** {@code then} where {@code a > b}, else {@code otherwise}; only the taken branch is worked out. */
    public static Expression ifGreater(Expression a, Expression b, Expression then, Expression otherwise) {
        return call(Function.IF, List.of(new Expression.Binary(Operator.GREATER, a, b), then, otherwise));
    }

    /** {@code then} where {@code a = b}, else {@code otherwise}; only the taken branch is worked out. */
    public static Expression ifEqual(Expression a, Expression b, Expression then, Expression otherwise) {
        return call(Function.IF, List.of(new Expression.Binary(Operator.EQUAL, a, b), then, otherwise));
    }

    private static Expression call(Function function, List<Expression> arguments) {
        return new Expression.Call(function, arguments);
    }

    private static Expression chain(Operator operator, Expression first, Expression... others) {
        Expression result = first;
        for (Expression other : others) {
            result = new Expression.Binary(operator, result, other);
        }
        return result;
    }
}
