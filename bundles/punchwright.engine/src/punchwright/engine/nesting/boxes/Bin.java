// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting.boxes;

import java.util.Arrays;

/** Boxes in one bin with their places. */
public final class Bin {

    private int[] box = new int[8];
    private int[] turn = new int[8];
    private int[] x = new int[8];
    private int[] y = new int[8];
    private int size;

    public int size() {
        return size;
    }

    public int box(int i) {
        return box[i];
    }

    public int turn(int i) {
        return turn[i];
    }

    public int x(int i) {
        return x[i];
    }

    public int y(int i) {
        return y[i];
    }

    void clear() {
        size = 0;
    }

    /** Adds a box with its turn and lower left corner; whether there is room is the caller's business. */
    public void put(int b, int t, int atX, int atY) {
        if (size == box.length) {
            box = Arrays.copyOf(box, 2 * size);
            turn = Arrays.copyOf(turn, 2 * size);
            x = Arrays.copyOf(x, 2 * size);
            y = Arrays.copyOf(y, 2 * size);
        }
        box[size] = b;
        turn[size] = t;
        x[size] = atX;
        y[size++] = atY;
    }

    Bin copy() {
        Bin c = new Bin();
        c.box = Arrays.copyOf(box, Math.max(8, size));
        c.turn = Arrays.copyOf(turn, Math.max(8, size));
        c.x = Arrays.copyOf(x, Math.max(8, size));
        c.y = Arrays.copyOf(y, Math.max(8, size));
        c.size = size;
        return c;
    }

    long area(BoxSet boxes) {
        long a = 0;
        for (int i = 0; i < size; i++) {
            a += boxes.area(box[i]);
        }
        return a;
    }
}
