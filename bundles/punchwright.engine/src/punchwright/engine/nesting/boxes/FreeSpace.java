// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting.boxes;

import java.util.Arrays;

/**
 * The maximal free rectangles of a bin in which boxes have been put.
 *
 * <p>After each box every free rectangle that it overlaps is replaced by its up to four remainders, and a rectangle inside
 * another is dropped; so a box fits in the bin's free space exactly when it fits in one rectangle of the list. One object
 * can serve many bins, one after the other.
 */
public final class FreeSpace {

    private int[] x0 = new int[32];
    private int[] y0 = new int[32];
    private int[] x1 = new int[32];
    private int[] y1 = new int[32];
    private int size;
    private int[] cut = new int[64];

    /** An empty bin. */
    public FreeSpace reset(int length, int width) {
        size = 0;
        if (length > 0 && width > 0) {
            add(0, 0, length, width);
        }
        return this;
    }

    public int size() {
        return size;
    }

    public int x(int i) {
        return x0[i];
    }

    public int y(int i) {
        return y0[i];
    }

    public int length(int i) {
        return x1[i] - x0[i];
    }

    public int width(int i) {
        return y1[i] - y0[i];
    }

    /** Takes a box away from the free space. */
    public void use(int x, int y, int length, int width) {
        int kept = 0;
        int cuts = 0;
        for (int i = 0; i < size; i++) {
            if (x >= x1[i] || x + length <= x0[i] || y >= y1[i] || y + width <= y0[i]) {
                copy(i, kept++);
            } else {
                cuts = remainders(i, x, y, x + length, y + width, cuts);
            }
        }
        size = kept;
        for (int c = 0; c < cuts; c += 4) {
            if (!insideAnother(c, cuts)) {
                add(cut[c], cut[c + 1], cut[c + 2], cut[c + 3]);
            }
        }
    }

    private int remainders(int i, int bx0, int by0, int bx1, int by1, int from) {
        if (from + 16 > cut.length) {
            cut = Arrays.copyOf(cut, 2 * cut.length);
        }
        int n = from;
        if (bx0 > x0[i]) {
            n = cut(n, x0[i], y0[i], bx0, y1[i]);
        }
        if (bx1 < x1[i]) {
            n = cut(n, bx1, y0[i], x1[i], y1[i]);
        }
        if (by0 > y0[i]) {
            n = cut(n, x0[i], y0[i], x1[i], by0);
        }
        if (by1 < y1[i]) {
            n = cut(n, x0[i], by1, x1[i], y1[i]);
        }
        return n;
    }

    private int cut(int n, int ax0, int ay0, int ax1, int ay1) {
        cut[n] = ax0;
        cut[n + 1] = ay0;
        cut[n + 2] = ax1;
        cut[n + 3] = ay1;
        return n + 4;
    }

    /** Only a remainder can lie inside another rectangle: the untouched ones were maximal before. */
    private boolean insideAnother(int c, int cuts) {
        int a = cut[c];
        int b = cut[c + 1];
        int d = cut[c + 2];
        int e = cut[c + 3];
        for (int i = 0; i < size; i++) {
            if (a >= x0[i] && b >= y0[i] && d <= x1[i] && e <= y1[i]) {
                return true;
            }
        }
        for (int o = c + 4; o < cuts; o += 4) {
            if (a >= cut[o] && b >= cut[o + 1] && d <= cut[o + 2] && e <= cut[o + 3]) {
                return true;
            }
        }
        return false;
    }

    private void copy(int from, int to) {
        x0[to] = x0[from];
        y0[to] = y0[from];
        x1[to] = x1[from];
        y1[to] = y1[from];
    }

    private void add(int ax0, int ay0, int ax1, int ay1) {
        if (size == x0.length) {
            x0 = Arrays.copyOf(x0, 2 * size);
            y0 = Arrays.copyOf(y0, 2 * size);
            x1 = Arrays.copyOf(x1, 2 * size);
            y1 = Arrays.copyOf(y1, 2 * size);
        }
        x0[size] = ax0;
        y0[size] = ay0;
        x1[size] = ax1;
        y1[size++] = ay1;
    }
}
