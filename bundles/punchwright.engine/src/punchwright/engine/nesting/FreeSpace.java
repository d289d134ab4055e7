// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

/**
 * The maximal free rectangles of a bin in which boxes have been put.
 *
 * <p>After each box every free rectangle that it overlaps is replaced by its up to four remainders, and a rectangle inside
 * another is dropped; so a box fits in the bin's free space exactly when it fits in one rectangle of the list.
 */
final class FreeSpace {

    private int[] x0 = new int[64];
    private int[] y0 = new int[64];
    private int[] x1 = new int[64];
    private int[] y1 = new int[64];
    private int size;

    FreeSpace(int length, int width) {
        if (length > 0 && width > 0) {
            add(0, 0, length, width);
        }
    }

    int size() {
        return size;
    }

    int x(int i) {
        return x0[i];
    }

    int y(int i) {
        return y0[i];
    }

    int length(int i) {
        return x1[i] - x0[i];
    }

    int width(int i) {
        return y1[i] - y0[i];
    }

    boolean takes(int length, int width) {
        for (int i = 0; i < size; i++) {
            if (length <= x1[i] - x0[i] && width <= y1[i] - y0[i]) {
                return true;
            }
        }
        return false;
    }

    /** Takes a box away from the free space. */
    void use(int x, int y, int length, int width) {
        int old = size;
        int kept = 0;
        int[][] cut = new int[4 * old][];
        int cuts = 0;
        for (int i = 0; i < old; i++) {
            if (x >= x1[i] || x + length <= x0[i] || y >= y1[i] || y + width <= y0[i]) {
                copy(i, kept++);
            } else {
                cuts = remainders(i, x, y, x + length, y + width, cut, cuts);
            }
        }
        size = kept;
        for (int c = 0; c < cuts; c++) {
            addUnlessInside(cut, c, cuts);
        }
    }

    private int remainders(int i, int bx0, int by0, int bx1, int by1, int[][] cut, int from) {
        int n = from;
        if (bx0 > x0[i]) {
            cut[n++] = new int[] {x0[i], y0[i], bx0, y1[i]};
        }
        if (bx1 < x1[i]) {
            cut[n++] = new int[] {bx1, y0[i], x1[i], y1[i]};
        }
        if (by0 > y0[i]) {
            cut[n++] = new int[] {x0[i], y0[i], x1[i], by0};
        }
        if (by1 < y1[i]) {
            cut[n++] = new int[] {x0[i], by1, x1[i], y1[i]};
        }
        return n;
    }

    /** Only a remainder can lie inside another rectangle: the untouched ones were maximal before. */
    private void addUnlessInside(int[][] cut, int c, int cuts) {
        int[] r = cut[c];
        for (int i = 0; i < size; i++) {
            if (r[0] >= x0[i] && r[1] >= y0[i] && r[2] <= x1[i] && r[3] <= y1[i]) {
                return;
            }
        }
        for (int o = c + 1; o < cuts; o++) {
            int[] q = cut[o];
            if (r[0] >= q[0] && r[1] >= q[1] && r[2] <= q[2] && r[3] <= q[3]) {
                return;
            }
        }
        add(r[0], r[1], r[2], r[3]);
    }

    private void copy(int from, int to) {
        x0[to] = x0[from];
        y0[to] = y0[from];
        x1[to] = x1[from];
        y1[to] = y1[from];
    }

    private void add(int ax0, int ay0, int ax1, int ay1) {
        if (size == x0.length) {
            x0 = java.util.Arrays.copyOf(x0, 2 * size);
            y0 = java.util.Arrays.copyOf(y0, 2 * size);
            x1 = java.util.Arrays.copyOf(x1, 2 * size);
            y1 = java.util.Arrays.copyOf(y1, 2 * size);
        }
        x0[size] = ax0;
        y0[size] = ay0;
        x1[size] = ax1;
        y1[size++] = ay1;
    }
}
