// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting.shapes;

import java.util.Arrays;

/**
 * A rectangle as columns of squares, taken or free. For each column and each power of two p the squares with a taken one among
 * the p from them upward are kept as bits, so that a run of any length is asked for by two of them and for all rows at once.
 */
final class Grid {

    final int columns;
    final int rows;
    final double cell;
    private final int words;
    private final int levels;
    /** [level][column * words + word]. */
    private final long[][] taken;
    private final long[] blocked;

    Grid(double length, double width, double cell) {
        this.cell = cell;
        columns = Math.max(1, (int) Math.ceil(length / cell - 1e-6));
        rows = Math.max(1, (int) Math.ceil(width / cell - 1e-6));
        words = (rows + 63) / 64;
        levels = 32 - Integer.numberOfLeadingZeros(rows);
        taken = new long[levels][columns * words];
        blocked = new long[words];
    }

    void take(Stamp s) {
        for (int k = Math.max(0, -s.column); k < s.columns && s.column + k < columns; k++) {
            int at = (s.column + k) * words;
            for (int i = s.first[k]; i < s.first[k + 1]; i++) {
                int from = Math.max(0, s.row + s.low[i]);
                int to = Math.min(rows - 1, s.row + s.high[i]);
                for (int r = from; r <= to; r++) {
                    taken[0][at + (r >> 6)] |= 1L << (r & 63);
                }
            }
            for (int level = 1; level < levels; level++) {
                System.arraycopy(taken[level - 1], at, taken[level], at, words);
                orShifted(taken[level - 1], at, 1 << level - 1, taken[level], at);
            }
        }
    }

    /** Adds the bits of a column, moved down by a number of rows. */
    private void orShifted(long[] from, int at, int by, long[] to, int toAt) {
        int skip = by >> 6;
        int bits = by & 63;
        for (int w = 0; w + skip < words; w++) {
            long v = from[at + w + skip] >>> bits;
            if (bits > 0 && w + skip + 1 < words) {
                v |= from[at + w + skip + 1] << 64 - bits;
            }
            to[toAt + w] |= v;
        }
    }

    /**
     * The lowest row from {@code from} to {@code to} in which a stamp with its first square in the given column and that row
     * meets no taken square; -1 without one.
     */
    int lowestFree(Stamp s, int column, int from, int to) {
        Arrays.fill(blocked, 0);
        for (int n = 0; n < s.columns; n++) {
            int k = s.spread[n];
            int at = (column + k) * words;
            if (column + k >= columns) {
                continue;
            }
            for (int i = s.first[k]; i < s.first[k + 1]; i++) {
                int level = 31 - Integer.numberOfLeadingZeros(s.high[i] - s.low[i] + 1);
                orShifted(taken[level], at, s.low[i], blocked, 0);
                orShifted(taken[level], at, s.high[i] + 1 - (1 << level), blocked, 0);
            }
            if ((n & 3) == 3 && firstFree(from, to) < 0) {
                return -1;
            }
        }
        return firstFree(from, to);
    }

    /** The next free row after the last question, from {@code from} on. */
    int firstFree(int from, int to) {
        int r = from;
        while (r <= to) {
            long free = ~blocked[r >> 6] >>> (r & 63);
            if (free != 0) {
                int at = r + Long.numberOfTrailingZeros(free);
                return at <= to ? at : -1;
            }
            r = (r | 63) + 1;
        }
        return -1;
    }
}
