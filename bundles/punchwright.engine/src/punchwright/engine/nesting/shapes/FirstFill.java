// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting.shapes;

import java.util.Arrays;
import java.util.Comparator;
import java.util.SplittableRandom;

/** A first arrangement without overlap: largest piece first, each as far left as sampled places allow. */
final class FirstFill {

    private static final int SAMPLES = 200;

    private final Field field;
    private final SplittableRandom random;
    private double reach;

    FirstFill(Field field, SplittableRandom random) {
        this.field = field;
        this.random = random;
    }

    void fill() {
        Integer[] order = new Integer[field.size()];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, Comparator.comparingDouble((Integer i) -> -field.pieces[i].hullArea).thenComparingInt(i -> i));
        for (int i : order) {
            put(i);
        }
        field.setLength(reach);
        field.refresh();
    }

    private void put(int i) {
        Piece p = field.pieces[i];
        double bestX = Double.POSITIVE_INFINITY;
        double bestY = 0;
        double bestRight = Double.POSITIVE_INFINITY;
        int bestTurn = 0;
        for (int s = 0; s < SAMPLES + p.turns.length; s++) {
            int t = s < SAMPLES ? random.nextInt(p.turns.length) : s - SAMPLES;
            Outline o = p.turns[t];
            boolean last = s >= SAMPLES;
            if (o.width() > field.width) {
                continue;
            }
            double x = -o.minX + (last ? reach : random.nextDouble() * reach);
            double y = -o.minY + (last ? 0 : random.nextDouble() * (field.width - o.width()));
            if (x + o.maxX < bestRight && field.cost(i, t, x, y, 1e-300) == 0) {
                double step = o.length();
                while (step > 1e-3 * o.length()) {
                    double nx = Math.max(-o.minX, x - step);
                    double ny = Math.max(-o.minY, y - step);
                    if (nx < x && field.cost(i, t, nx, y, 1e-300) == 0) {
                        x = nx;
                    } else if (ny < y && field.cost(i, t, x, ny, 1e-300) == 0) {
                        y = ny;
                    } else {
                        step /= 2;
                    }
                }
                if (x + o.maxX < bestRight) {
                    bestRight = x + o.maxX;
                    bestX = x;
                    bestY = y;
                    bestTurn = t;
                }
            }
        }
        field.move(i, bestTurn, bestX, bestY);
        reach = Math.max(reach, bestRight);
    }
}
