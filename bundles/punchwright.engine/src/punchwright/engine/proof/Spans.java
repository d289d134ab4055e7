// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.proof;

import java.util.Arrays;

/** Stretches of a line as pairs of shares of its length, in the order found; may overlap until merged. */
final class Spans {

    private double[] ends = new double[8];
    private int size;

    void clear() {
        size = 0;
    }

    void add(double from, double to) {
        double a = Math.max(0, from);
        double b = Math.min(1, to);
        if (b <= a) {
            return;
        }
        if (size + 2 > ends.length) {
            ends = Arrays.copyOf(ends, 2 * ends.length);
        }
        ends[size++] = a;
        ends[size++] = b;
    }

    void addAll(Spans other) {
        for (int i = 0; i < other.size; i += 2) {
            add(other.ends[i], other.ends[i + 1]);
        }
    }

    boolean isEmpty() {
        return size == 0;
    }

    int count() {
        return size / 2;
    }

    double from(int index) {
        return ends[2 * index];
    }

    double to(int index) {
        return ends[2 * index + 1];
    }

    /** Sorts and joins what overlaps or touches within {@code slack}. */
    void merge(double slack) {
        for (int i = 2; i < size; i += 2) {
            double a = ends[i];
            double b = ends[i + 1];
            int j = i;
            for (; j > 0 && ends[j - 2] > a; j -= 2) {
                ends[j] = ends[j - 2];
                ends[j + 1] = ends[j - 1];
            }
            ends[j] = a;
            ends[j + 1] = b;
        }
        int kept = 0;
        for (int i = 0; i < size; i += 2) {
            if (kept > 0 && ends[i] <= ends[kept - 1] + slack) {
                ends[kept - 1] = Math.max(ends[kept - 1], ends[i + 1]);
            } else {
                ends[kept] = ends[i];
                ends[kept + 1] = ends[i + 1];
                kept += 2;
            }
        }
        size = kept;
    }

    /** Sum of the merged stretches. */
    double length() {
        double sum = 0;
        for (int i = 0; i < size; i += 2) {
            sum += ends[i + 1] - ends[i];
        }
        return sum;
    }
}
