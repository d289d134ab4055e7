// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import java.util.List;
import java.util.OptionalDouble;

import punchwright.engine.finding.Finding;

/**
 * General tolerances for linear sizes without their own, plus or minus, mm.
 *
 * <p>Source: ISO 2768-1, Table 1. Range: 0.5 to 4000 mm, each row up to and including its upper end; empty where the
 * standard gives none (below 0.5 mm, class f above 2000 mm, class v up to 3 mm). Worked example: 30.0 m gives 0.2, 30.1 m
 * gives 0.3.
 */
public enum GeneralTolerance {
    FINE("f", 0.05, 0.05, 0.1, 0.15, 0.2, 0.3, 0.5, Double.NaN),
    MEDIUM("m", 0.1, 0.1, 0.2, 0.3, 0.5, 0.8, 1.2, 2),
    COARSE("c", 0.2, 0.3, 0.5, 0.8, 1.2, 2, 3, 4),
    VERY_COARSE("v", Double.NaN, 0.5, 1, 1.5, 2.5, 4, 6, 8);

    private static final double LEAST_MM = 0.5;
    private static final double[] UP_TO_MM = { 3, 6, 30, 120, 400, 1000, 2000, 4000 };

    private final String letter;
    private final double[] plusMinusMm;

    GeneralTolerance(String letter, double... plusMinusMm) {
        this.letter = letter;
        this.plusMinusMm = plusMinusMm;
    }

    /** Letter in the standard. */
    public String letter() {
        return letter;
    }

    /** Tolerance for a nominal size in mm; empty where the standard gives none. */
    public OptionalDouble plusMinusMm(double nominalMm) {
        for (int row = 0; nominalMm >= LEAST_MM && row < UP_TO_MM.length; row++) {
            if (nominalMm <= UP_TO_MM[row]) {
                return Double.isNaN(plusMinusMm[row]) ? OptionalDouble.empty() : OptionalDouble.of(plusMinusMm[row]);
            }
        }
        return OptionalDouble.empty();
    }

    /** A warning where the standard gives none. */
    public List<Finding> check(String subject, double nominalMm) {
        return plusMinusMm(nominalMm).isPresent() ? List.of()
                : List.of(Finding.of(PressReason.NO_TOLERANCE, subject, nominalMm, letter));
    }
}
