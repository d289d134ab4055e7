// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

/**
 * Number of hits and even pitch along a straight cut.
 *
 * <p>Symbols: cut length L [mm], punch extent a [mm] along it, least overlap o [mm]. {@code n = ceil((L - a) / (a - o)) + 1}
 * for L above a, else 1; pitch {@code (L - a) / (n - 1)}. Range: {@code 0 <= o < a}. A guard of 1e-9 keeps binary rounding from
 * adding a hit. Source: arithmetic. Worked example: L 500, a 50, o 2 gives 11 hits at 45 mm; L 98 gives 2, L 98.01 gives 3.
 */
public final class HitCount {

    private HitCount() {
    }

    public static int along(double lengthMm, double extentMm, double overlapMm) {
        if (lengthMm <= extentMm + 1e-9) {
            return 1;
        }
        return (int) Math.ceil((lengthMm - extentMm) / (extentMm - overlapMm) - 1e-9) + 1;
    }

    /** Even pitch for a number of hits, mm; 0 for one hit. */
    public static double pitchMm(double lengthMm, double extentMm, int hits) {
        return hits < 2 ? 0 : (lengthMm - extentMm) / (hits - 1);
    }

    /** Steps of at most {@code largest} that fill {@code total}, at least one. */
    public static int steps(double total, double largest) {
        return Math.max(1, (int) Math.ceil(total / largest - 1e-9));
    }

    /**
     * What the last step of equal steps takes of new sheet, mm: the pitch itself, so that no sliver is left; the whole cut with
     * one hit. Slivers narrower than the thickness jam between punch and die (common practice).
     */
    public static double lastStepMm(double lengthMm, double extentMm, double overlapMm) {
        int hits = along(lengthMm, extentMm, overlapMm);
        return hits < 2 ? lengthMm : pitchMm(lengthMm, extentMm, hits);
    }

    /** What the last step would take with the largest pitch and a rest, mm: the sliver that equal steps avoid. */
    public static double unevenLastStepMm(double lengthMm, double extentMm, double overlapMm) {
        int hits = along(lengthMm, extentMm, overlapMm);
        return hits < 2 ? lengthMm : lengthMm - extentMm - (hits - 2) * (extentMm - overlapMm);
    }

    /**
     * Hits around a rectangular opening A x B with a rectangle a x b, nx and ny hits along the sides:
     * {@code 2 (nx + ny) - 4} for nx, ny of at least 2, else {@code nx ny}. Example: 100 x 80 with 30 x 30, o 2: 10.
     */
    public static int outline(int alongX, int alongY) {
        return alongX < 2 || alongY < 2 ? alongX * alongY : 2 * (alongX + alongY) - 4;
    }
}
