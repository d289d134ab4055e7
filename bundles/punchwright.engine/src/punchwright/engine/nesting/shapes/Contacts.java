// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting.shapes;

/**
 * Small shifts of a piece that bring one of its corners exactly onto a corner of a neighbour, or level with one in x or in y:
 * the nearest few of each. Exact fits are found this way; random steps would never meet them.
 */
final class Contacts {

    private static final int PAIRS = 4;
    private static final int LEVELS = 3;

    final double[] pairX = new double[PAIRS];
    final double[] pairY = new double[PAIRS];
    final double[] levelX = new double[LEVELS];
    final double[] levelY = new double[LEVELS];
    int pairs;
    int levelsX;
    int levelsY;
    private final double[] pairKey = new double[PAIRS];

    /** Shifts of at most {@code reach} for piece {@code i} as outline {@code o} at (x, y). */
    void find(Field field, int i, Outline o, double x, double y, double reach) {
        pairs = 0;
        levelsX = 0;
        levelsY = 0;
        for (int j = 0; j < field.size(); j++) {
            if (j != i && field.near(j, x + o.minX - reach, y + o.minY - reach, x + o.maxX + reach, y + o.maxY + reach)) {
                corners(o, x - field.x[j], y - field.y[j], field.pieces[j].turns[field.turn[j]], reach);
            }
        }
    }

    private void corners(Outline m, double dx, double dy, Outline f, double reach) {
        for (int a = 0; a < m.ax.length; a++) {
            double mx = m.ax[a] + dx;
            double my = m.ay[a] + dy;
            for (int b = 0; b < f.ax.length; b++) {
                double sx = f.ax[b] - mx;
                double sy = f.ay[b] - my;
                boolean inX = Math.abs(sx) <= reach;
                boolean inY = Math.abs(sy) <= reach;
                if (inX && inY) {
                    keepPair(sx, sy);
                }
                if (inX) {
                    levelsX = keepLevel(levelX, levelsX, sx);
                }
                if (inY) {
                    levelsY = keepLevel(levelY, levelsY, sy);
                }
            }
        }
    }

    private void keepPair(double sx, double sy) {
        double key = Math.abs(sx) + Math.abs(sy);
        if (pairs == PAIRS && key >= pairKey[PAIRS - 1]) {
            return;
        }
        int k = Math.min(pairs, PAIRS - 1);
        while (k > 0 && pairKey[k - 1] > key) {
            pairKey[k] = pairKey[k - 1];
            pairX[k] = pairX[k - 1];
            pairY[k] = pairY[k - 1];
            k--;
        }
        pairKey[k] = key;
        pairX[k] = sx;
        pairY[k] = sy;
        pairs = Math.min(PAIRS, pairs + 1);
    }

    private static int keepLevel(double[] level, int count, double s) {
        double key = Math.abs(s);
        if (count == LEVELS && key >= Math.abs(level[LEVELS - 1])) {
            return count;
        }
        for (int k = 0; k < count; k++) {
            if (Math.abs(level[k] - s) < 1e-9 * (1 + key)) {
                return count;
            }
        }
        int k = Math.min(count, LEVELS - 1);
        while (k > 0 && Math.abs(level[k - 1]) > key) {
            level[k] = level[k - 1];
            k--;
        }
        level[k] = s;
        return Math.min(LEVELS, count + 1);
    }
}
