// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.List;

/**
 * The tools of an order chosen together.
 *
 * @param parts        operations of each part, in order
 * @param costSeconds  what was made least: hits, wear, webs, changes and making ready of the whole order, in seconds of the
 *                     machine; infinite when no choice finds places for all
 * @param boundSeconds no choice costs less; equal to the cost when proven best
 */
public record OrderSelection(List<OperationList> parts, double costSeconds, double boundSeconds) {

    public OrderSelection {
        parts = List.copyOf(parts);
    }

    /** Whether it is proven that no choice is cheaper. */
    public boolean proven() {
        return costSeconds - boundSeconds <= 1e-6 * Math.max(1, costSeconds);
    }

    /** How much dearer than the best it can be at most, as a share of the bound. */
    public double gap() {
        return proven() ? 0 : (costSeconds - boundSeconds) / Math.max(1e-9, boundSeconds);
    }
}
