// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting.bars;

/**
 * A linear program whose columns come one by one: least cost, rows with a right side of 0 or more, the inverse of the basis kept
 * as a dense matrix. Rows start with a column of their own (slack, or a stand-in at a high cost).
 */
final class Simplex {

    private static final double EPS = 1e-9;

    private final int rows;
    private final double[][] inverse;
    private final double[] right;
    private final double[] costs;
    private final int[] columns;

    /** {@code startCosts} are those of the columns that the rows start with, numbered -1 - row. */
    Simplex(double[] rightSide, double[] startCosts) {
        rows = rightSide.length;
        inverse = new double[rows][rows];
        right = rightSide.clone();
        costs = startCosts.clone();
        columns = new int[rows];
        for (int r = 0; r < rows; r++) {
            inverse[r][r] = 1;
            columns[r] = -1 - r;
        }
    }

    /** Price of each row. */
    double[] prices() {
        double[] prices = new double[rows];
        for (int r = 0; r < rows; r++) {
            if (costs[r] != 0) {
                for (int c = 0; c < rows; c++) {
                    prices[c] += costs[r] * inverse[r][c];
                }
            }
        }
        return prices;
    }

    /** Takes a column into the basis; false when it can grow without end or nothing moves. */
    boolean enter(int column, double[] entries, double cost) {
        double[] d = new double[rows];
        for (int r = 0; r < rows; r++) {
            for (int c = 0; c < rows; c++) {
                d[r] += inverse[r][c] * entries[c];
            }
        }
        int out = leaving(d);
        if (out < 0) {
            return false;
        }
        pivot(out, d);
        columns[out] = column;
        costs[out] = cost;
        return true;
    }

    private int leaving(double[] d) {
        int out = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int r = 0; r < rows; r++) {
            if (d[r] > EPS) {
                double ratio = Math.max(0, right[r]) / d[r];
                if (ratio < least - 1e-12 || ratio < least + 1e-12 && d[r] > d[out]) {
                    least = Math.min(least, ratio);
                    out = r;
                }
            }
        }
        return out;
    }

    private void pivot(int out, double[] d) {
        double p = d[out];
        for (int c = 0; c < rows; c++) {
            inverse[out][c] /= p;
        }
        right[out] /= p;
        for (int r = 0; r < rows; r++) {
            if (r != out && d[r] != 0) {
                for (int c = 0; c < rows; c++) {
                    inverse[r][c] -= d[r] * inverse[out][c];
                }
                right[r] -= d[r] * right[out];
            }
        }
    }

    /** Value of a column, 0 when it is not in the basis. */
    double[] values(int count) {
        double[] values = new double[count];
        for (int r = 0; r < rows; r++) {
            if (columns[r] >= 0 && columns[r] < count) {
                values[columns[r]] = Math.max(0, right[r]);
            }
        }
        return values;
    }

    /** Sum of the columns that the given rows started with. */
    double started(int from, int to) {
        double sum = 0;
        for (int r = 0; r < rows; r++) {
            int row = -1 - columns[r];
            sum += columns[r] < 0 && row >= from && row < to ? Math.max(0, right[r]) : 0;
        }
        return sum;
    }
}
