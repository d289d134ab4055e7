// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.sheet;

import java.util.function.IntConsumer;

/**
 * All hits of one tool on a layout, in the order of the run, sorted into the cells of a grid so that those in sight are found
 * without looking at the rest. Coordinates mm, angles degrees.
 */
public final class HitGroup {

    private static final int HITS_PER_CELL = 24;

    private final int balloon;
    private final String toolName;
    private final Outline outline;
    private final double roundDiameter;
    private final double[] x;
    private final double[] y;
    private final double[] angle;
    private final int[] number;
    private final int[] holding;
    private final int columns;
    private final int lines;
    private final double cellX;
    private final double cellY;
    private final int[] cellStart;
    private final int[] cellHits;

    private HitGroup(Builder b, double lengthMm, double widthMm) {
        balloon = b.balloon;
        toolName = b.toolName;
        outline = b.outline;
        roundDiameter = b.roundDiameter;
        x = b.x.toArray();
        y = b.y.toArray();
        angle = b.angle.toArray();
        number = b.number.stream().mapToInt(Integer::intValue).toArray();
        holding = b.holding.stream().mapToInt(Integer::intValue).toArray();
        int cells = Math.max(1, x.length / HITS_PER_CELL);
        columns = Math.max(1, (int) Math.round(Math.sqrt(cells * lengthMm / widthMm)));
        lines = Math.max(1, cells / columns);
        cellX = lengthMm / columns;
        cellY = widthMm / lines;
        cellStart = new int[columns * lines + 1];
        cellHits = new int[x.length];
        sortIntoCells();
    }

    private void sortIntoCells() {
        for (int i = 0; i < x.length; i++) {
            cellStart[cell(x[i], y[i]) + 1]++;
        }
        for (int i = 1; i < cellStart.length; i++) {
            cellStart[i] += cellStart[i - 1];
        }
        int[] next = cellStart.clone();
        for (int i = 0; i < x.length; i++) {
            cellHits[next[cell(x[i], y[i])]++] = i;
        }
    }

    private int cell(double atX, double atY) {
        return line(atY) * columns + column(atX);
    }

    private int column(double atX) {
        return Math.max(0, Math.min(columns - 1, (int) Math.floor(atX / cellX)));
    }

    private int line(double atY) {
        return Math.max(0, Math.min(lines - 1, (int) Math.floor(atY / cellY)));
    }

    /** Every hit whose axis lies in the box, and some around it. */
    public void within(double minX, double minY, double maxX, double maxY, IntConsumer what) {
        for (int line = line(minY); line <= line(maxY); line++) {
            for (int column = column(minX); column <= column(maxX); column++) {
                int cell = line * columns + column;
                for (int k = cellStart[cell]; k < cellStart[cell + 1]; k++) {
                    what.accept(cellHits[k]);
                }
            }
        }
    }

    /** Balloon number. */
    public int balloon() {
        return balloon;
    }

    /** Name of the tool. */
    public String toolName() {
        return toolName;
    }

    /** The tool about its axis at angle 0. */
    public Outline outline() {
        return outline;
    }

    /** Diameter of a round tool, else 0. */
    public double roundDiameter() {
        return roundDiameter;
    }

    /** Number of hits. */
    public int size() {
        return x.length;
    }

    /** x of hit {@code i}. */
    public double x(int i) {
        return x[i];
    }

    /** y of hit {@code i}. */
    public double y(int i) {
        return y[i];
    }

    /** Angle of hit {@code i}. */
    public double angle(int i) {
        return angle[i];
    }

    /** Number of hit {@code i} in the run of the sheet, from 0. */
    public int number(int i) {
        return number[i];
    }

    /** Holding of hit {@code i}, from 0. */
    public int holding(int i) {
        return holding[i];
    }

    /** Collects hits. */
    public static final class Builder {
        private final int balloon;
        private final String toolName;
        private final Outline outline;
        private final double roundDiameter;
        private final Doubles x = new Doubles();
        private final Doubles y = new Doubles();
        private final Doubles angle = new Doubles();
        private final java.util.List<Integer> number = new java.util.ArrayList<>();
        private final java.util.List<Integer> holding = new java.util.ArrayList<>();

        /** For one tool. */
        public Builder(int balloon, String toolName, Outline outline, double roundDiameter) {
            this.balloon = balloon;
            this.toolName = toolName;
            this.outline = outline;
            this.roundDiameter = roundDiameter;
        }

        /** Adds a hit. */
        public void add(int numberInRun, int holdingIndex, double atX, double atY, double angleDeg) {
            number.add(numberInRun);
            holding.add(holdingIndex);
            x.add(atX);
            y.add(atY);
            angle.add(angleDeg);
        }

        /** The group on a sheet of this size. */
        public HitGroup build(double lengthMm, double widthMm) {
            return new HitGroup(this, lengthMm, widthMm);
        }
    }

    /** A growing array. */
    private static final class Doubles {
        private double[] values = new double[64];
        private int size;

        void add(double value) {
            if (size == values.length) {
                values = java.util.Arrays.copyOf(values, size * 2);
            }
            values[size++] = value;
        }

        double[] toArray() {
            return java.util.Arrays.copyOf(values, size);
        }
    }
}
