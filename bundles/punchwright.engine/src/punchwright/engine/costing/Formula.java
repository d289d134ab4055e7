// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.costing;

import java.util.function.ToDoubleFunction;

/** A formula that can be worked out here and written into a spreadsheet: one expression, two readers. */
public interface Formula {

    /** Value, with the values of named cells given by {@code cells}. */
    double evaluate(ToDoubleFunction<String> cells);

    /** The expression in the syntax of spreadsheets (English function names, comma between arguments), without "=". */
    String text();
}
