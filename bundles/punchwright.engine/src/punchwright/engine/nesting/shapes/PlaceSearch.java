// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting.shapes;

import java.util.SplittableRandom;

/**
 * The best place for one piece among the others: random samples over the rectangle, some where corners meet, and around the
 * present place, then a descent along random directions from the best few.
 */
final class PlaceSearch {

    private static final int KEPT = 3;

    /** Of a hundred wide samples, those where corners meet: exact fits are hardly ever sampled otherwise. */
    private static final int TOUCH = 30;

    private final Field field;
    private final SplittableRandom random;
    private final int wide;
    private final int close;
    private final int[] keptTurn = new int[KEPT];
    private final double[] keptX = new double[KEPT];
    private final double[] keptY = new double[KEPT];
    private final double[] keptCost = new double[KEPT];
    private final Contacts contacts = new Contacts();
    int bestTurn;
    double bestX;
    double bestY;
    double bestCost;

    PlaceSearch(Field field, SplittableRandom random, int wide, int close) {
        this.field = field;
        this.random = random;
        this.wide = wide;
        this.close = close;
    }

    /** Looks for a place that costs less than {@code most}; false when none is found. */
    boolean find(int i, double most) {
        for (int k = 0; k < KEPT; k++) {
            keptCost[k] = most;
            keptTurn[k] = -1;
        }
        Piece piece = field.pieces[i];
        double near = 0.25 * piece.diameter;
        for (int s = 0; s < close && keptCost[0] > 0; s++) {
            int t = random.nextInt(3) == 0 ? random.nextInt(piece.turns.length) : field.turn[i];
            Outline o = piece.turns[t];
            sample(i, t, clampX(o, field.x[i] + (random.nextDouble() * 2 - 1) * near),
                    clampY(o, field.y[i] + (random.nextDouble() * 2 - 1) * near));
        }
        for (int s = 0; s < wide && keptCost[0] > 0; s++) {
            int t = random.nextInt(piece.turns.length);
            Outline o = piece.turns[t];
            if (o.length() <= field.length && o.width() <= field.width) {
                if (field.size() > 1 && random.nextInt(100) < TOUCH) {
                    touch(i, t, o);
                } else {
                    sample(i, t, -o.minX + random.nextDouble() * (field.length - o.length()),
                            -o.minY + random.nextDouble() * (field.width - o.width()));
                }
            }
        }
        return refineKept(i, piece, most);
    }

    /** A place where corners meet: with one neighbour both ways, or level with two of them or a side of the rectangle. */
    private void touch(int i, int t, Outline o) {
        int a = random.nextInt(o.ax.length);
        int j = other(i);
        Outline f = field.pieces[j].turns[field.turn[j]];
        int b = random.nextInt(f.ax.length);
        double x = field.x[j] + f.ax[b] - o.ax[a];
        double y = field.y[j] + f.ay[b] - o.ay[a];
        switch (random.nextInt(8)) {
            case 0 -> y = random.nextBoolean() ? -o.minY : field.width - o.maxY;
            case 1 -> x = random.nextBoolean() ? -o.minX : field.length - o.maxX;
            case 2, 3 -> {
                int k = other(i);
                Outline g = field.pieces[k].turns[field.turn[k]];
                y = field.y[k] + g.ay[random.nextInt(g.ay.length)] - o.ay[random.nextInt(o.ay.length)];
            }
            default -> {
                // both directions with the same corner
            }
        }
        if (x >= -o.minX && x <= field.length - o.maxX && y >= -o.minY && y <= field.width - o.maxY) {
            sample(i, t, x, y);
        }
    }

    private int other(int i) {
        int j = random.nextInt(field.size() - 1);
        return j < i ? j : j + 1;
    }

    private boolean refineKept(int i, Piece piece, double most) {
        bestCost = most;
        bestTurn = -1;
        for (int k = 0; k < KEPT && bestCost > 0; k++) {
            if (keptTurn[k] >= 0) {
                descend(i, keptTurn[k], keptX[k], keptY[k], keptCost[k], 0.02 * piece.diameter, 0.002 * piece.diameter);
            }
        }
        if (bestTurn >= 0 && bestCost > 0) {
            descend(i, bestTurn, bestX, bestY, bestCost, 0.002 * piece.diameter, 0.00005 * piece.diameter);
        }
        if (bestTurn >= 0 && bestCost > 0) {
            snap(i, 0.02 * piece.diameter);
        }
        return bestTurn >= 0;
    }

    private void sample(int i, int t, double x, double y) {
        double cost = field.cost(i, t, x, y, keptCost[KEPT - 1]);
        if (cost < keptCost[KEPT - 1]) {
            int k = KEPT - 1;
            while (k > 0 && keptCost[k - 1] > cost) {
                keptCost[k] = keptCost[k - 1];
                keptTurn[k] = keptTurn[k - 1];
                keptX[k] = keptX[k - 1];
                keptY[k] = keptY[k - 1];
                k--;
            }
            keptCost[k] = cost;
            keptTurn[k] = t;
            keptX[k] = x;
            keptY[k] = y;
        }
    }

    /** Steps along an axis or a diagonal, wider after success, narrower after failure. */
    private void descend(int i, int t, double startX, double startY, double startCost, double from, double to) {
        Outline o = field.pieces[i].turns[t];
        double x = startX;
        double y = startY;
        double cost = startCost;
        double step = from;
        while (step > to && cost > 0) {
            int axis = random.nextInt(4);
            double dx = axis == 1 ? 0 : step;
            double dy = axis == 0 ? 0 : axis == 3 ? -step : step;
            boolean better = false;
            for (int sign = 1; sign >= -1; sign -= 2) {
                double nx = clampX(o, x + sign * dx);
                double ny = clampY(o, y + sign * dy);
                double c = field.cost(i, t, nx, ny, cost);
                if (c < cost) {
                    cost = c;
                    x = nx;
                    y = ny;
                    better = true;
                    break;
                }
            }
            step *= better ? 1.1 : 0.5;
        }
        if (cost < bestCost || bestTurn < 0) {
            bestCost = cost;
            bestTurn = t;
            bestX = x;
            bestY = y;
        }
    }

    /** Tries to bring corners of the piece exactly to corners of its neighbours, or exactly level with them. */
    private void snap(int i, double reach) {
        Outline o = field.pieces[i].turns[bestTurn];
        contacts.find(field, i, o, bestX, bestY, reach);
        double x = bestX;
        double y = bestY;
        for (int k = 0; k < contacts.pairs && bestCost > 0; k++) {
            attempt(i, o, x + contacts.pairX[k], y + contacts.pairY[k]);
        }
        for (int a = 0; a <= contacts.levelsX && bestCost > 0; a++) {
            for (int b = a == 0 ? 1 : 0; b <= contacts.levelsY && bestCost > 0; b++) {
                attempt(i, o, x + (a == 0 ? 0 : contacts.levelX[a - 1]), y + (b == 0 ? 0 : contacts.levelY[b - 1]));
            }
        }
    }

    private void attempt(int i, Outline o, double x, double y) {
        double nx = clampX(o, x);
        double ny = clampY(o, y);
        double cost = field.cost(i, bestTurn, nx, ny, bestCost);
        if (cost < bestCost) {
            bestCost = cost;
            bestX = nx;
            bestY = ny;
        }
    }

    private double clampX(Outline o, double x) {
        return Math.max(-o.minX, Math.min(field.length - o.maxX, x));
    }

    private double clampY(Outline o, double y) {
        return Math.max(-o.minY, Math.min(field.width - o.maxY, y));
    }
}
