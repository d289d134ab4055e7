// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting.bars;

import java.util.Map;

/**
 * Patterns with their runs.
 *
 * @param runs     of each pattern, in the order found
 * @param cost     of all bars
 * @param bound    lower bound on the cost of any plan that makes all pieces
 */
public record BarPlan(Map<Pattern, Integer> runs, double cost, double bound) {

    /** Whether no cheaper plan exists, by the bound; cents of a cent apart. */
    public boolean proven() {
        return cost <= bound + 1e-6 * Math.max(1, Math.abs(bound));
    }
}
