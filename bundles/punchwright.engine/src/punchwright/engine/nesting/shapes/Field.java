// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting.shapes;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

import punchwright.engine.nesting.boxes.Work;

/**
 * Pieces in a rectangle, overlaps allowed: where they lie, how badly each pair overlaps, how far each sticks out, and the
 * weights of guided local search that these are multiplied with.
 */
final class Field {

    final Piece[] pieces;
    final int[] turn;
    final double[] x;
    final double[] y;
    final double width;
    double length;
    private final double[] lowX;
    private final double[] highX;
    private final double[] lowY;
    private final double[] highY;
    private final double[][] overlap;
    private final double[] outside;
    private final double[][] weight;
    private final double[] outsideWeight;
    private final Overlap test = new Overlap();
    /** Large pieces first: a place that is no good is seen sooner. */
    private final int[] byArea;
    private final Work work;

    Field(Piece[] pieces, double length, double width, Work work) {
        int n = pieces.length;
        this.pieces = pieces;
        this.length = length;
        this.width = width;
        this.work = work;
        turn = new int[n];
        x = new double[n];
        y = new double[n];
        lowX = new double[n];
        highX = new double[n];
        lowY = new double[n];
        highY = new double[n];
        Arrays.fill(lowX, Double.POSITIVE_INFINITY);
        overlap = new double[n][n];
        outside = new double[n];
        weight = new double[n][n];
        outsideWeight = new double[n];
        byArea = IntStream.range(0, n).boxed().sorted(Comparator.comparingDouble((Integer i) -> -pieces[i].hullArea))
                .mapToInt(i -> i).toArray();
        resetWeights();
    }

    int size() {
        return pieces.length;
    }

    void resetWeights() {
        for (double[] w : weight) {
            Arrays.fill(w, 1);
        }
        Arrays.fill(outsideWeight, 1);
    }

    Arrangement arrangement() {
        return new Arrangement(length, turn, x, y);
    }

    void set(Arrangement a) {
        length = a.length();
        for (int i = 0; i < size(); i++) {
            setBox(i, a.turn()[i], a.x()[i], a.y()[i]);
        }
        refresh();
    }

    void setLength(double newLength) {
        length = newLength;
        for (int i = 0; i < size(); i++) {
            outside[i] = outside(i);
        }
    }

    /** Recomputes every overlap. */
    void refresh() {
        for (int i = 0; i < size(); i++) {
            for (int j = 0; j < i; j++) {
                overlap[i][j] = pair(i, turn[i], x[i], y[i], j, Double.MAX_VALUE);
                overlap[j][i] = overlap[i][j];
            }
            outside[i] = outside(i);
        }
    }

    private double outside(int i) {
        double out = Math.max(0, -lowX[i]) + Math.max(0, highX[i] - length) + Math.max(0, -lowY[i])
                + Math.max(0, highY[i] - width);
        return out > 1e-9 * length ? 2 * (out + 0.01 * pieces[i].diameter) * Math.sqrt(pieces[i].hullArea) : 0;
    }

    private void setBox(int i, int t, double px, double py) {
        Outline o = pieces[i].turns[t];
        turn[i] = t;
        x[i] = px;
        y[i] = py;
        lowX[i] = px + o.minX;
        highX[i] = px + o.maxX;
        lowY[i] = py + o.minY;
        highY[i] = py + o.maxY;
    }

    /** Moves a piece and brings its overlaps up to date. */
    void move(int i, int t, double px, double py) {
        setBox(i, t, px, py);
        for (int j = 0; j < size(); j++) {
            if (j != i) {
                overlap[i][j] = lowX[j] < highX[i] && highX[j] > lowX[i] && lowY[j] < highY[i] && highY[j] > lowY[i]
                        ? pair(i, t, px, py, j, Double.MAX_VALUE) : 0;
                overlap[j][i] = overlap[i][j];
            }
        }
        outside[i] = outside(i);
    }

    private double pair(int i, int t, double px, double py, int j, double most) {
        Piece a = pieces[i];
        Piece b = pieces[j];
        return test.of(a.turns[t], px, py, b.turns[turn[j]], x[j], y[j], 0.01 * Math.max(a.diameter, b.diameter),
                a.size * b.size, most);
    }

    /** Weighted overlap of piece {@code i} were it at the given place inside the rectangle; stops once above {@code most}. */
    double cost(int i, int t, double px, double py, double most) {
        Outline o = pieces[i].turns[t];
        double lx = px + o.minX;
        double hx = px + o.maxX;
        double ly = py + o.minY;
        double hy = py + o.maxY;
        double sum = 0;
        int looked = 0;
        for (int k = 0; k < byArea.length && sum < most; k++) {
            int j = byArea[k];
            if (lowX[j] < hx && highX[j] > lx && lowY[j] < hy && highY[j] > ly && j != i) {
                double v = pair(i, t, px, py, j, (most - sum) / weight[i][j]);
                sum += v > 0 ? v * weight[i][j] : 0;
                looked++;
            }
        }
        work.add(looked + 1L);
        return sum;
    }

    /** Whether the box of piece {@code j} meets the given box. */
    boolean near(int j, double lx, double ly, double hx, double hy) {
        return lowX[j] < hx && highX[j] > lx && lowY[j] < hy && highY[j] > ly;
    }

    /** Weighted overlap of a piece where it lies. */
    double cost(int i) {
        double sum = outside[i] * outsideWeight[i];
        for (int j = 0; j < pieces.length; j++) {
            sum += overlap[i][j] * weight[i][j];
        }
        return sum;
    }

    boolean bad(int i) {
        if (outside[i] > 0) {
            return true;
        }
        for (int j = 0; j < pieces.length; j++) {
            if (overlap[i][j] > 0) {
                return true;
            }
        }
        return false;
    }

    /** All overlaps without weights. */
    double total() {
        double sum = 0;
        for (int i = 0; i < size(); i++) {
            sum += outside[i];
            for (int j = 0; j < i; j++) {
                sum += overlap[i][j];
            }
        }
        return sum;
    }

    /** Raises the weights of what overlaps, most for the worst, and lets the others fade. */
    void reweigh() {
        double worst = 0;
        for (int i = 0; i < size(); i++) {
            worst = Math.max(worst, outside[i]);
            for (int j = 0; j < i; j++) {
                worst = Math.max(worst, overlap[i][j]);
            }
        }
        for (int i = 0; i < size(); i++) {
            outsideWeight[i] = next(outsideWeight[i], outside[i], worst);
            for (int j = 0; j < i; j++) {
                weight[i][j] = next(weight[i][j], overlap[i][j], worst);
                weight[j][i] = weight[i][j];
            }
        }
    }

    private static double next(double w, double v, double worst) {
        return v > 0 ? w * (1.05 + 0.3 * v / worst) : Math.max(1, w * 0.98);
    }
}
