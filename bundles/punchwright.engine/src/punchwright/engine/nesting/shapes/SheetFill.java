// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting.shapes;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import punchwright.engine.nesting.boxes.Work;

/**
 * A sheet that is filled piece by piece: each goes as far left and then as low as it can, into hollows and usable openings of
 * others too.
 *
 * <p>A grid of squares offers places, all rows of a column at once; the edges themselves decide. A place that the grid offers is
 * moved by less than two squares until nothing overlaps and then pushed left and down until it touches. What a kind has found
 * taken stays taken, so that each kind and turn goes over the sheet only once.
 */
public final class SheetFill {

    private static final int TRIES = 3;

    private final Stamps stamps;
    private final double length;
    private final double width;
    private final Grid grid;
    private final Work work;
    private final double precision;
    private final Overlap test = new Overlap();
    private final List<Laid> laid = new ArrayList<>();
    private double[] lowX = new double[32];
    private double[] highX = new double[32];
    private double[] lowY = new double[32];
    private double[] highY = new double[32];
    private Outline[] outlines = new Outline[32];
    private final int[][] nextColumn;
    private final int[][] nextRow;
    private double area;
    private double settledX;
    private double settledY;

    /** An empty sheet of the given size. */
    public SheetFill(Stamps stamps, double length, double width, Work work) {
        this.stamps = stamps;
        this.length = length;
        this.width = width;
        this.work = work;
        this.grid = new Grid(length, width, stamps.cell());
        this.precision = stamps.cell() / 32768;
        this.nextColumn = new int[stamps.kinds()][];
        this.nextRow = new int[stamps.kinds()][];
        for (int k = 0; k < stamps.kinds(); k++) {
            nextColumn[k] = new int[stamps.piece(k).turns.length];
            nextRow[k] = new int[stamps.piece(k).turns.length];
        }
    }

    /** What lies on the sheet, in the order of placing. */
    public List<Laid> laid() {
        return List.copyOf(laid);
    }

    public int size() {
        return laid.size();
    }

    /** Area of the pieces, with their half webs. */
    public double area() {
        return area;
    }

    public double reach() {
        double x = 0;
        for (int i = 0; i < laid.size(); i++) {
            x = Math.max(x, highX[i]);
        }
        return x;
    }

    /** Puts a piece where it lies already, unchecked. */
    public void keep(Laid l) {
        add(l.kind(), l.turn(), l.x(), l.y());
    }

    /** Puts a piece of a kind at the best place of its turns; false when none is found. */
    public boolean put(int kind, TurnRule rule) {
        int bestTurn = -1;
        double bestScore = Double.POSITIVE_INFINITY;
        double bestX = 0;
        double bestY = 0;
        Piece piece = stamps.piece(kind);
        for (int t = 0; t < piece.turns.length; t++) {
            if (place(kind, t)) {
                double score = rule.score(piece.turns[t], settledX, settledY);
                if (score < bestScore - 1e-6 || score < bestScore + 1e-6 && settledY < bestY - 1e-6) {
                    bestTurn = t;
                    bestScore = score;
                    bestX = settledX;
                    bestY = settledY;
                }
            }
        }
        if (bestTurn >= 0) {
            add(kind, bestTurn, bestX, bestY);
        }
        return bestTurn >= 0;
    }

    private void add(int kind, int turn, double x, double y) {
        Piece piece = stamps.piece(kind);
        Outline o = piece.turns[turn];
        int n = laid.size();
        if (n == lowX.length) {
            lowX = Arrays.copyOf(lowX, 2 * n);
            highX = Arrays.copyOf(highX, 2 * n);
            lowY = Arrays.copyOf(lowY, 2 * n);
            highY = Arrays.copyOf(highY, 2 * n);
            outlines = Arrays.copyOf(outlines, 2 * n);
        }
        lowX[n] = x + o.minX;
        highX[n] = x + o.maxX;
        lowY[n] = y + o.minY;
        highY[n] = y + o.maxY;
        outlines[n] = o;
        laid.add(new Laid(kind, turn, x, y));
        area += piece.area;
        grid.take(Stamp.of(o, x, y, grid.cell));
    }

    /** Finds the first place of a turn from where the last search ended. */
    private boolean place(int kind, int turn) {
        Outline o = stamps.piece(kind).turns[turn];
        if (o.length() > length || o.width() > width) {
            return false;
        }
        Stamp stamp = stamps.of(kind, turn);
        int lastColumn = (int) Math.floor((length - o.length()) / grid.cell);
        int lastRow = (int) Math.floor((width - o.width()) / grid.cell);
        int row = nextRow[kind][turn];
        for (int column = nextColumn[kind][turn]; column <= lastColumn; column++) {
            row = grid.lowestFree(stamp, column, row, lastRow);
            work.add(1 + stamp.columns / 64);
            for (int tries = 0; row >= 0 && tries < TRIES; tries++) {
                if (settle(o, column * grid.cell - o.minX, row * grid.cell - o.minY)) {
                    nextColumn[kind][turn] = column;
                    nextRow[kind][turn] = row;
                    return true;
                }
                row = grid.firstFree(row + 1 + tries * tries, lastRow);
            }
            row = 0;
        }
        nextColumn[kind][turn] = lastColumn + 1;
        nextRow[kind][turn] = 0;
        return false;
    }

    /** Moves a little until clear, then pushes left and down; the place is in {@code settledX}, {@code settledY}. */
    private boolean settle(Outline o, double x, double y) {
        double step = grid.cell / 4;
        for (int ring = 0; ring <= 6; ring++) {
            for (int way = 0; way < (ring == 0 ? 1 : 5); way++) {
                double nx = Math.max(-o.minX, Math.min(length - o.maxX, x + (way == 1 ? 0 : way == 3 ? -ring * step : ring * step)));
                double ny = Math.max(-o.minY, Math.min(width - o.maxY, y + (way == 0 || way == 3 ? 0 : way == 4 ? -ring * step
                        : ring * step)));
                if (clear(o, nx, ny)) {
                    push(o, nx, ny);
                    return true;
                }
            }
        }
        return false;
    }

    private void push(Outline o, double startX, double startY) {
        double x = startX;
        double y = startY;
        double step = 2 * grid.cell;
        while (step > precision) {
            double nx = Math.max(-o.minX, x - step);
            double ny = Math.max(-o.minY, y - step);
            if (nx < x && clear(o, nx, y)) {
                x = nx;
            } else if (ny < y && clear(o, x, ny)) {
                y = ny;
            } else {
                step /= 2;
            }
        }
        settledX = x;
        settledY = y;
    }

    private boolean clear(Outline o, double x, double y) {
        double lx = x + o.minX;
        double hx = x + o.maxX;
        double ly = y + o.minY;
        double hy = y + o.maxY;
        int looked = 1;
        boolean clear = true;
        for (int j = laid.size() - 1; j >= 0 && clear; j--) {
            if (lowX[j] < hx && highX[j] > lx && lowY[j] < hy && highY[j] > ly) {
                looked++;
                Laid l = laid.get(j);
                clear = test.of(o, x, y, outlines[j], l.x(), l.y(), 1, 1, 0) == 0;
            }
        }
        work.add(looked);
        return clear;
    }
}
