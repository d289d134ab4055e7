// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import java.util.ArrayList;
import java.util.List;

/**
 * When a tool is ground and what it lasts in all.
 *
 * <p>Symbols: G grind reserve [mm], g taken off a grind [mm], N hits between grinds, s hits since the last grind. Grinds
 * {@code k = floor(G / g)}; hits in all {@code N (k + 1)}; dies are ground half to a third as often as punches (trade-magazine
 * article on tool grinding). Range: g 0.05 to 0.5 mm, G 0 to 10 mm; below 0.1 and above 0.3 mm a grind is unusual (common
 * practice). Source: arithmetic; a guard of 1e-9 keeps binary rounding from losing a grind. Worked example: G 3.0, g 0.2, N 100
 * 000: 15 grinds, 1 600 000 hits; with price 180 and 12 a grind 0.000225 a hit ({@link ToolLife#costPerHit}).
 */
public final class RegrindPlan {

    private RegrindPlan() {
    }

    /** {@code floor(G / g)}. */
    public static int grinds(double reserveMm, double perGrindMm) {
        return (int) Math.floor(reserveMm / perGrindMm + 1e-9);
    }

    /** {@code N (k + 1)}. */
    public static double hitsInAll(double hitsPerGrind, int grinds) {
        return hitsPerGrind * (grinds + 1);
    }

    /** Grinds of the die at least, {@code ceil(k / 3)}. */
    public static int leastDieGrinds(int punchGrinds) {
        return (punchGrinds + 2) / 3;
    }

    /** Grinds of the die at most, {@code ceil(k / 2)}. */
    public static int mostDieGrinds(int punchGrinds) {
        return (punchGrinds + 1) / 2;
    }

    /** Hits from now at which a grind is due, rising, the end of the tool last; 0 where one is overdue. */
    public static List<Double> due(double hitsPerGrind, double hitsSinceGrind, int grindsLeft) {
        List<Double> due = new ArrayList<>();
        double first = Math.max(0, hitsPerGrind - hitsSinceGrind);
        for (int i = 0; i <= grindsLeft; i++) {
            due.add(first + i * hitsPerGrind);
        }
        return due;
    }
}
