// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.holding;

import java.util.Arrays;

/**
 * A system of difference constraints {@code v[a] - v[b] <= c} kept closed: {@code most[a][b]} is the least upper bound that
 * follows for {@code v[a] - v[b]}, by shortest paths (Cormen, Leiserson, Rivest, Stein, Introduction to Algorithms, section
 * "Difference constraints and shortest paths"). Variable 0 is the origin.
 */
final class Differences {

    private static final double EPS = 1e-7;

    private final double[][] most;

    Differences(int variables) {
        most = new double[variables][variables];
        for (int i = 0; i < variables; i++) {
            Arrays.fill(most[i], Double.POSITIVE_INFINITY);
            most[i][i] = 0;
        }
    }

    private Differences(double[][] most) {
        this.most = most;
    }

    Differences copy() {
        double[][] m = new double[most.length][];
        for (int i = 0; i < m.length; i++) {
            m[i] = most[i].clone();
        }
        return new Differences(m);
    }

    /** Adds {@code v[a] - v[b] <= c}; false when the system then has no solution. */
    boolean add(int a, int b, double c) {
        if (c >= most[a][b]) {
            return true;
        }
        if (c + most[b][a] < -EPS) {
            return false;
        }
        double bound = Math.max(c, -most[b][a]);
        for (int i = 0; i < most.length; i++) {
            double toA = most[i][a] + bound;
            for (int j = 0; toA < Double.POSITIVE_INFINITY && j < most.length; j++) {
                most[i][j] = Math.min(most[i][j], toA + most[b][j]);
            }
        }
        return true;
    }

    double least(int variable) {
        return -most[0][variable];
    }

    double largest(int variable) {
        return most[variable][0];
    }

    /** Fixes a variable as near to the wish as the system allows and returns its value. */
    double fix(int variable, double wish) {
        double value = Math.max(least(variable), Math.min(largest(variable), wish));
        add(variable, 0, value);
        add(0, variable, -value);
        return value;
    }
}
