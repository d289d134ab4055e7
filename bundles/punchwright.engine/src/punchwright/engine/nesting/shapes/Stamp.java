// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting.shapes;

import java.util.Arrays;

/**
 * The squares of a grid that an outline covers: for each column the runs of rows. A square counts from about half its width up;
 * what is thinner than a square keeps at least one.
 */
final class Stamp {

    private static final int SAMPLES = 3;

    /** Column and row of the first square. */
    final int column;
    final int row;
    final int columns;
    final int rows;
    /** Runs of column k: from {@code first[k]} to below {@code first[k + 1]} in {@code low} and {@code high}, rows from {@code row}. */
    final int[] first;
    final int[] low;
    final int[] high;
    /** The columns in an order in which the first few are spread over all. */
    final int[] spread;

    private Stamp(int column, int row, int rows, int[] first, int[] low, int[] high) {
        this.column = column;
        this.row = row;
        this.columns = first.length - 1;
        this.rows = rows;
        this.first = first;
        this.low = low;
        this.high = high;
        this.spread = spread(columns);
    }

    private static int[] spread(int n) {
        int[] order = new int[n];
        int bits = 32 - Integer.numberOfLeadingZeros(Math.max(1, n - 1));
        int count = 0;
        for (int i = 0; i < 1 << bits; i++) {
            int k = bits == 0 ? 0 : Integer.reverse(i) >>> 32 - bits;
            if (k < n) {
                order[count++] = k;
            }
        }
        return order;
    }

    /** The squares under an outline whose reference point lies at (x, y), both from the corner of the grid. */
    static Stamp of(Outline o, double x, double y, double cell) {
        int column = (int) Math.floor((x + o.minX) / cell + 1e-6);
        int row = (int) Math.floor((y + o.minY) / cell + 1e-6);
        int columns = Math.max(1, (int) Math.ceil((x + o.maxX) / cell - 1e-6) - column);
        int rows = Math.max(1, (int) Math.ceil((y + o.maxY) / cell - 1e-6) - row);
        double[][] crossings = crossings(o, x - column * cell, y - row * cell, cell, columns);
        int words = (rows + 63) / 64;
        int[] first = new int[columns + 1];
        Runs runs = new Runs();
        for (int k = 0; k < columns; k++) {
            long[] bits = new long[words];
            for (int s = k * SAMPLES; s < (k + 1) * SAMPLES; s++) {
                cover(crossings[s], cell, rows, bits);
            }
            runs.add(bits, rows);
            first[k + 1] = runs.count;
        }
        return new Stamp(column, row, rows, first, Arrays.copyOf(runs.low, runs.count), Arrays.copyOf(runs.high, runs.count));
    }

    /** Sorted heights at which each sample line of each column crosses the outline. */
    private static double[][] crossings(Outline o, double x, double y, double cell, int columns) {
        int lines = columns * SAMPLES;
        double pitch = cell / SAMPLES;
        double[][] at = new double[lines][8];
        int[] count = new int[lines];
        for (int e = 0; e < o.ax.length; e++) {
            double x1 = Math.min(o.ax[e], o.bx[e]) + x;
            double x2 = Math.max(o.ax[e], o.bx[e]) + x;
            int from = Math.max(0, (int) Math.ceil(x1 / pitch - 0.5));
            int to = Math.min(lines - 1, (int) Math.ceil(x2 / pitch - 0.5) - 1);
            for (int s = from; s <= to; s++) {
                double share = ((s + 0.5) * pitch - x - o.ax[e]) / (o.bx[e] - o.ax[e]);
                if (count[s] == at[s].length) {
                    at[s] = Arrays.copyOf(at[s], 2 * count[s]);
                }
                at[s][count[s]++] = y + o.ay[e] + share * (o.by[e] - o.ay[e]);
            }
        }
        for (int s = 0; s < lines; s++) {
            at[s] = Arrays.copyOf(at[s], count[s] / 2 * 2);
            Arrays.sort(at[s]);
        }
        return at;
    }

    private static void cover(double[] heights, double cell, int rows, long[] bits) {
        for (int i = 0; i + 1 < heights.length; i += 2) {
            int from = (int) Math.round(heights[i] / cell);
            int to = (int) Math.round(heights[i + 1] / cell) - 1;
            if (to < from) {
                from = (int) Math.floor((heights[i] + heights[i + 1]) / 2 / cell);
                to = from;
            }
            for (int r = Math.max(0, from); r <= Math.min(rows - 1, to); r++) {
                bits[r >> 6] |= 1L << (r & 63);
            }
        }
    }

    private static final class Runs {

        private int[] low = new int[64];
        private int[] high = new int[64];
        private int count;

        void add(long[] bits, int rows) {
            int r = 0;
            while (r < rows) {
                if ((bits[r >> 6] >>> (r & 63) & 1) == 0) {
                    r++;
                    continue;
                }
                int from = r;
                while (r < rows && (bits[r >> 6] >>> (r & 63) & 1) != 0) {
                    r++;
                }
                if (count == low.length) {
                    low = Arrays.copyOf(low, 2 * count);
                    high = Arrays.copyOf(high, 2 * count);
                }
                low[count] = from;
                high[count++] = r - 1;
            }
        }
    }
}
