// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.costing;

import java.math.BigDecimal;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/**
 * A node of a formula. Made by {@link Formulas}; evaluates here and prints itself in spreadsheet syntax with brackets only
 * where they are needed.
 */
public sealed interface Expression extends Formula {

    /** Names of the cells the formula uses, each once, in order of use. */
    default List<String> references() {
        Set<String> names = new LinkedHashSet<>();
        collect(names);
        return List.copyOf(names);
    }

    /** Adds the names of the cells used. */
    void collect(Set<String> names);

    /** Binding strength: 1 comparison, 2 sum, 3 product, 4 atom. */
    int strength();

    /** A named cell. */
    record Ref(String name) implements Expression {
        public Ref {
            CellNames.check(name);
        }

        @Override
        public double evaluate(ToDoubleFunction<String> cells) {
            return cells.applyAsDouble(name);
        }

        @Override
        public String text() {
            return name;
        }

        @Override
        public void collect(Set<String> names) {
            names.add(name);
        }

        @Override
        public int strength() {
            return 4;
        }
    }

    /** A constant of the formula itself, as 60 min/h; never an input. */
    record Num(double value) implements Expression {
        public Num {
            if (!Double.isFinite(value)) {
                throw new IllegalArgumentException("a formula needs a finite number, not " + value);
            }
        }

        @Override
        public double evaluate(ToDoubleFunction<String> cells) {
            return value;
        }

        @Override
        public String text() {
            return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
        }

        @Override
        public void collect(Set<String> names) {
            // a constant uses no cell
        }

        @Override
        public int strength() {
            return value < 0 ? 1 : 4;
        }
    }

    /** Two operands and an operator between them. */
    record Binary(Operator operator, Expression left, Expression right) implements Expression {
        @Override
        public double evaluate(ToDoubleFunction<String> cells) {
            return operator.apply(left.evaluate(cells), right.evaluate(cells));
        }

        @Override
        public String text() {
            int own = operator.strength();
            boolean strict = operator == Operator.MINUS || operator == Operator.DIVIDE || own == 1;
            return bracket(left, left.strength() < own) + operator.sign()
                    + bracket(right, right.strength() < own || strict && right.strength() == own);
        }

        private static String bracket(Expression e, boolean needed) {
            return needed ? "(" + e.text() + ")" : e.text();
        }

        @Override
        public void collect(Set<String> names) {
            left.collect(names);
            right.collect(names);
        }

        @Override
        public int strength() {
            return operator.strength();
        }
    }

    /** A function of the spreadsheet. */
    record Call(Function function, List<Expression> arguments) implements Expression {
        public Call {
            arguments = List.copyOf(arguments);
            function.checkCount(arguments.size());
        }

        @Override
        public double evaluate(ToDoubleFunction<String> cells) {
            if (function == Function.IF) {
                return arguments.get(arguments.get(0).evaluate(cells) != 0 ? 1 : 2).evaluate(cells);
            }
            return function.apply(arguments.stream().mapToDouble(a -> a.evaluate(cells)).toArray());
        }

        @Override
        public String text() {
            return arguments.stream().map(Expression::text).collect(Collectors.joining(",", function.name() + "(", ")"));
        }

        @Override
        public void collect(Set<String> names) {
            arguments.forEach(a -> a.collect(names));
        }

        @Override
        public int strength() {
            return 4;
        }
    }
}
