// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import java.util.List;

import punchwright.engine.finding.Finding;

/** The range in which a formula holds, and the finding when an input lies outside. */
record Range(String quantity, double least, double largest, String unit, String formula) {

    /** No finding inside the range (ends included), else one. */
    List<Finding> check(double value) {
        return value >= least && value <= largest ? List.of()
                : List.of(Finding.of(PressReason.RANGE, formula, quantity, value, unit, least, largest, formula));
    }
}
