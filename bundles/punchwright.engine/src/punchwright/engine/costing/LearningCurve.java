// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.costing;

/**
 * Learning curve [time or money per piece]: each doubling of the number made brings the value to {@code rate} times what it was.
 *
 * <p>Formula (Wright 1936): {@code y = a X^b}, {@code b = log(rate) / log 2}. Cumulative-average form: y is the mean of the
 * first X pieces and the total is {@code X y}. Unit form: y is the Xth piece. Range: a 0 or more, rate above 0 to 1, X 1 or
 * more. Source: Wright, "Factors affecting the cost of airplanes", J. Aeronautical Sciences 3 (1936); textbook tables in the
 * tests.
 *
 * @param first value of the first piece
 * @param rate  learning rate as a fraction, 0.8 for 80 %
 */
public record LearningCurve(double first, double rate) {

    public LearningCurve {
        if (!(first >= 0) || !(rate > 0 && rate <= 1)) {
            throw new IllegalArgumentException("learning curve with first value " + first + " and rate " + rate
                    + ": the value must be 0 or more and the rate above 0 and at most 1");
        }
    }

    /** {@code a X^b}: the mean of the first X pieces (cumulative-average form) or the Xth piece (unit form). */
    public double at(double pieces) {
        if (!(pieces >= 1)) {
            throw new IllegalArgumentException("learning curve at " + pieces + " pieces; give 1 or more");
        }
        return first * Math.pow(pieces, Math.log(rate) / Math.log(2));
    }

    /** Total of the first pieces, cumulative-average form. */
    public double total(double pieces) {
        return pieces == 0 ? 0 : pieces * at(pieces);
    }

    /** Total of {@code next} pieces after {@code done}, cumulative-average form. */
    public double next(double done, double next) {
        return total(done + next) - total(done);
    }
}
