// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.costing;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.function.ToDoubleFunction;

/**
 * The functions a formula may use, with the meaning that spreadsheets give them (ISO/IEC 29500-1, 18.17.7). The three that
 * round look at 15 significant digits, as spreadsheets do, so that 2.675 rounds to 2.68 and not to 2.67.
 */
enum Function {
    SUM(1, 200, a -> Arrays.stream(a).sum()),
    MIN(1, 200, a -> Arrays.stream(a).min().orElseThrow()),
    MAX(1, 200, a -> Arrays.stream(a).max().orElseThrow()),
    ROUND(2, 2, a -> scale(a[0], a[1], RoundingMode.HALF_UP)),
    ROUNDUP(2, 2, a -> scale(a[0], a[1], RoundingMode.UP)),
    CEILING(2, 2, a -> a[1] * scale(a[0] / a[1], 0, RoundingMode.CEILING)),
    SQRT(1, 1, a -> Math.sqrt(a[0])),
    POWER(2, 2, a -> Math.pow(a[0], a[1])),
    IF(3, 3, a -> a[0] != 0 ? a[1] : a[2]);

    private static final MathContext SPREADSHEET = new MathContext(15, RoundingMode.HALF_UP);

    private final int least;
    private final int most;
    private final ToDoubleFunction<double[]> work;

    Function(int least, int most, ToDoubleFunction<double[]> work) {
        this.least = least;
        this.most = most;
        this.work = work;
    }

    double apply(double[] arguments) {
        return work.applyAsDouble(arguments);
    }

    void checkCount(int count) {
        if (count < least || count > most) {
            throw new IllegalArgumentException(name() + " takes " + least + " to " + most + " arguments, not " + count);
        }
    }

    private static double scale(double value, double digits, RoundingMode mode) {
        return Double.isFinite(value) ? new BigDecimal(value, SPREADSHEET).setScale((int) digits, mode).doubleValue() : value;
    }
}
