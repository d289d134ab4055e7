// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

/**
 * Life and cost of a tool per hit.
 *
 * <p>Symbols: price P, residual value S, grinds g, cost per grind G (currency), N hits between grinds. Formula:
 * {@code cost = (P - S + g G) / ((g + 1) N)}; {@code hits left = N factor - hits since the last grind}. Source: arithmetic;
 * hits between grinds are common practice and kept with the tool (mild steel 50 000 to 100 000, stainless 20 000 to 50 000,
 * aluminium 100 000 and more when lubricated). Range: N above 0. Worked example: P 180, S 0, g 10, G 6, N 60 000:
 * 240 / 660 000 = 0.000364 a hit.
 */
public final class ToolLife {

    private ToolLife() {
    }

    public static double costPerHit(double price, double residual, int grinds, double grindCost, double hitsPerGrind) {
        return (price - residual + grinds * grindCost) / ((grinds + 1) * hitsPerGrind);
    }

    /** Hits before the next grind is due; negative when it is overdue. */
    public static double hitsLeft(double hitsPerGrind, double lifeFactor, double hitsSinceGrind) {
        return hitsPerGrind * lifeFactor - hitsSinceGrind;
    }
}
