// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.sequence;

import java.util.Arrays;

/** A closed tour as an array with positions; changed by 2-opt moves only, which are logged so that they can be undone. */
final class TourArray {

    private final int[] tour;
    private final int[] position;
    private int[] log = new int[256];
    private int logged;

    TourArray(int[] start) {
        tour = start.clone();
        position = new int[tour.length];
        for (int i = 0; i < tour.length; i++) {
            position[tour[i]] = i;
        }
    }

    int size() {
        return tour.length;
    }

    int[] order() {
        return tour.clone();
    }

    int position(int node) {
        return position[node];
    }

    /** The node at a position; positions beyond the end go round. */
    int at(int index) {
        return tour[index % tour.length];
    }

    int next(int node) {
        int p = position[node] + 1;
        return tour[p == tour.length ? 0 : p];
    }

    int previous(int node) {
        int p = position[node];
        return tour[p == 0 ? tour.length - 1 : p - 1];
    }

    /** Whether going forward from {@code a} one meets {@code b} no later than {@code c}. */
    boolean between(int a, int b, int c) {
        int pa = position[a];
        int pb = position[b];
        int pc = position[c];
        return pa <= pc ? pa <= pb && pb <= pc : pb >= pa || pb <= pc;
    }

    /** Replaces the edges a-b and c-d by a-c and b-d; b follows a and d follows c, both forward or both backward. */
    void twoOpt(int a, int b, int c, int d) {
        if (logged + 4 > log.length) {
            log = Arrays.copyOf(log, 2 * log.length);
        }
        log[logged++] = a;
        log[logged++] = b;
        log[logged++] = c;
        log[logged++] = d;
        apply(a, b, c, d);
    }

    void clearLog() {
        logged = 0;
    }

    /** Takes back every move since the log was cleared. */
    void undo() {
        while (logged > 0) {
            logged -= 4;
            apply(log[logged], log[logged + 2], log[logged + 1], log[logged + 3]);
        }
    }

    private void apply(int a, int b, int c, int d) {
        if (next(a) == b) {
            reverse(position[b], position[c]);
        } else {
            reverse(position[c], position[b]);
        }
    }

    /** Reverses the way from one position forward to the other, or what is outside it when that is shorter. */
    private void reverse(int from, int to) {
        int n = tour.length;
        int inside = to - from + (to < from ? n : 0) + 1;
        int i = 2 * inside <= n ? from : to + 1 == n ? 0 : to + 1;
        int j = 2 * inside <= n ? to : from == 0 ? n - 1 : from - 1;
        for (int k = Math.min(inside, n - inside) / 2; k > 0; k--) {
            int u = tour[i];
            int v = tour[j];
            tour[i] = v;
            position[v] = i;
            tour[j] = u;
            position[u] = j;
            i = i + 1 == n ? 0 : i + 1;
            j = j == 0 ? n - 1 : j - 1;
        }
    }
}
