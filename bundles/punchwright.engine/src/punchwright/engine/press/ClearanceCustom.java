// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import java.util.EnumMap;
import java.util.Map;

/**
 * Total die clearance that shops take on CNC presses, per cent of the thickness; wider than press-tool values because tool
 * life and stripping rule there.
 *
 * <p>Symbols: t [mm]; result in per cent of t in all. Range: t 0.4 to 8 mm. Source: common practice of the trade, no source; a
 * start for a shop's own record. Worked example: mild steel t 2: 20 %, so 0.40 mm in all and 0.20 mm per side.
 */
public final class ClearanceCustom {

    private static final double ALL_MM = Double.POSITIVE_INFINITY;
    /** Up to this thickness, per cent in all. */
    private static final double[][] ALUMINIUM = { { 2, 15 }, { 4, 20 }, { ALL_MM, 25 } };
    private static final double[][] MILD = { { 3, 20 }, { ALL_MM, 25 } };
    private static final double[][] HARD = { { 1.5, 20 }, { 3, 25 }, { ALL_MM, 30 } };
    private static final double[][] RED = { { 2, 15 }, { ALL_MM, 20 } };
    private static final Map<MaterialGroup, double[][]> ROWS = new EnumMap<>(Map.of(MaterialGroup.ALUMINIUM, ALUMINIUM,
            MaterialGroup.MILD_STEEL, MILD, MaterialGroup.COATED_STEEL, MILD, MaterialGroup.STAINLESS_STEEL, HARD,
            MaterialGroup.HIGH_STRENGTH_STEEL, HARD, MaterialGroup.COPPER, RED, MaterialGroup.BRASS, RED));

    private ClearanceCustom() {
    }

    /** Per cent of t in all. */
    public static double percent(MaterialGroup group, double thicknessMm) {
        for (double[] row : ROWS.get(group)) {
            if (thicknessMm <= row[0]) {
                return row[1];
            }
        }
        throw new IllegalArgumentException("thickness is no number: " + thicknessMm);
    }
}
