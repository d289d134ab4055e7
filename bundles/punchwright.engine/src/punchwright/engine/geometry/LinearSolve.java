// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.geometry;

/** Small systems of linear equations by elimination with row exchange. */
public final class LinearSolve {

    private LinearSolve() {
    }

    /**
     * @param rows n rows of n coefficients and the right side; changed
     * @return the solution, or null when the rows are not independent
     */
    public static double[] solve(double[][] rows) {
        int n = rows.length;
        for (int c = 0; c < n; c++) {
            int pivot = c;
            for (int r = c + 1; r < n; r++) {
                pivot = Math.abs(rows[r][c]) > Math.abs(rows[pivot][c]) ? r : pivot;
            }
            double[] swap = rows[c];
            rows[c] = rows[pivot];
            rows[pivot] = swap;
            if (Math.abs(rows[c][c]) < 1e-12) {
                return null;
            }
            for (int r = c + 1; r < n; r++) {
                double f = rows[r][c] / rows[c][c];
                for (int k = c; k <= n; k++) {
                    rows[r][k] -= f * rows[c][k];
                }
            }
        }
        return backwards(rows, n);
    }

    private static double[] backwards(double[][] rows, int n) {
        double[] x = new double[n];
        for (int r = n - 1; r >= 0; r--) {
            double sum = rows[r][n];
            for (int k = r + 1; k < n; k++) {
                sum -= rows[r][k] * x[k];
            }
            x[r] = sum / rows[r][r];
        }
        return x;
    }
}
