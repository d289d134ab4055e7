// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import java.util.EnumMap;
import java.util.Map;

/**
 * Hits between two grinds by material group, where the shop has no record of its own yet.
 *
 * <p>Symbols: hits between grinds at t up to 2 mm, right clearance, oiled, uncoated tool steel; factors: dry 0.5, nibbling 0.6
 * (0.5 to 0.7, side load), sheet above 2 mm {@code 2 / t}. {@code N = table dry nibble thick}. Range: t 0.4 to 8 mm; scatter a
 * factor of three. Source: common practice of the trade, no source; the dry factor is told of stainless and used for all.
 * Worked example: stainless 40 000 oiled, 20 000 dry.
 */
public final class PunchLife {

    public static final double DRY_FACTOR = 0.5;
    public static final double NIBBLING_FACTOR = 0.6;

    /** Least and most hits between grinds. */
    private static final Map<MaterialGroup, int[]> HITS = new EnumMap<>(Map.of(MaterialGroup.ALUMINIUM,
            new int[] { 150_000, 400_000 }, MaterialGroup.COPPER, new int[] { 100_000, 300_000 }, MaterialGroup.BRASS,
            new int[] { 100_000, 300_000 }, MaterialGroup.MILD_STEEL, new int[] { 80_000, 200_000 }, MaterialGroup.COATED_STEEL,
            new int[] { 60_000, 150_000 }, MaterialGroup.HIGH_STRENGTH_STEEL, new int[] { 30_000, 80_000 },
            MaterialGroup.STAINLESS_STEEL, new int[] { 20_000, 60_000 }));

    private PunchLife() {
    }

    public static double leastHits(MaterialGroup group) {
        return HITS.get(group)[0];
    }

    public static double mostHits(MaterialGroup group) {
        return HITS.get(group)[1];
    }

    /** The middle of the range, before factors. */
    public static double middleHits(MaterialGroup group) {
        return (leastHits(group) + mostHits(group)) / 2;
    }

    /** Product of the factors that shorten the life, above 0 up to 1. */
    public static double factor(double thicknessMm, boolean dry, boolean nibbling) {
        double thick = thicknessMm <= 2 ? 1 : 2 / thicknessMm;
        return thick * (dry ? DRY_FACTOR : 1) * (nibbling ? NIBBLING_FACTOR : 1);
    }
}
