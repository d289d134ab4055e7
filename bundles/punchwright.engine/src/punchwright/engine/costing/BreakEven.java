// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.costing;

import java.util.OptionalDouble;

/**
 * Quantity at which two methods cost the same [pieces].
 *
 * <p>Formula: {@code n = (F2 - F1) / (v1 - v2)} with fixed cost F of the lot and cost v of a piece, money. Below n the method
 * with less fixed cost is cheaper. Empty where one method is never dearer than the other (no n above 0). Source: any
 * cost-accounting text.
 */
public final class BreakEven {

    private BreakEven() {
    }

    public static OptionalDouble quantity(double fixed1, double perPiece1, double fixed2, double perPiece2) {
        double n = (fixed2 - fixed1) / (perPiece1 - perPiece2);
        return Double.isFinite(n) && n > 0 ? OptionalDouble.of(n) : OptionalDouble.empty();
    }
}
