// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting.shapes;

/** Where every piece lies: turn and reference point of each. */
record Arrangement(double length, int[] turn, double[] x, double[] y) {

    Arrangement {
        turn = turn.clone();
        x = x.clone();
        y = y.clone();
    }
}
