// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.contour;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import punchwright.engine.geometry.Point;

/**
 * Points closer than the tolerance count as one node, also by way of a third. A grid of cells (four tolerances wide) in an
 * open hash table finds the neighbours; a point near the border of a cell is looked up on both sides.
 */
final class Nodes {

    /** Closer points are the same but for the digits of the file, in mm. */
    private static final double EXACT_MM = 1e-6;

    /** With more points than this nearby, a new one that lies close to one of them is not kept for later comparison. */
    private static final int CROWD = 64;
    /** Beyond, a double does not resolve cells, and counting them would not end. */
    private static final double FARTHEST = 1L << 53;
    private static final int CROWD_SPACING = 8;

    private final double tolerance;
    private final double cell;
    private Point[] points;
    private int[] parent;
    private int[] nextInCell;
    private int size;
    /** In each place the latest point of a cell, below the upper half of the hash of the cell; -1 where there is none. */
    private long[] table;
    private int used;
    private int[] gapPoints = new int[0];
    private double[] gapWidths = new double[0];
    private int gaps;

    Nodes(double tolerance) {
        this(tolerance, 64);
    }

    /** @param expected number of points, as far as known; more make it grow */
    Nodes(double tolerance, int expected) {
        this.tolerance = tolerance;
        this.cell = 4 * tolerance;
        int room = Math.max(64, expected);
        points = new Point[room];
        parent = new int[room];
        nextInCell = new int[room];
        table = filled(4 * Integer.highestOneBit(Math.min(room, 1 << 26)));
    }

    private static long[] filled(int n) {
        long[] t = new long[n];
        Arrays.fill(t, -1);
        return t;
    }

    /** Adds a point and gives its number; {@link #find} tells its node. */
    int add(Point p) {
        int i = size++;
        if (i == points.length) {
            points = Arrays.copyOf(points, i * 2);
            parent = Arrays.copyOf(parent, i * 2);
            nextInCell = Arrays.copyOf(nextInCell, i * 2);
        }
        points[i] = p;
        parent[i] = i;
        if (!joinNeighbours(i, p)) {
            insert(i);
        }
        return i;
    }

    /** Whether a crowd of points is there already and one of them so near that this one need not be kept. */
    private boolean joinNeighbours(int i, Point p) {
        int met = 0;
        boolean stoodFor = false;
        long x0 = index(p.x() - tolerance);
        long x1 = index(p.x() + tolerance);
        long y0 = index(p.y() - tolerance);
        long y1 = index(p.y() + tolerance);
        for (long x = x0; x <= x1; x++) {
            for (long y = y0; y <= y1; y++) {
                for (int j = (int) table[slot(x, y)]; j >= 0; j = nextInCell[j]) {
                    stoodFor |= join(i, j, p) < tolerance / CROWD_SPACING;
                    met++;
                }
            }
        }
        return met > CROWD && stoodFor;
    }

    private double join(int i, int j, Point p) {
        double d = p.distance(points[j]);
        if (d <= tolerance) {
            if (d > EXACT_MM) {
                noteGap(i, d);
            }
            parent[find(i)] = find(j);
        }
        return d;
    }

    private long index(double v) {
        return (long) Math.floor(Math.max(-FARTHEST, Math.min(FARTHEST, v / cell)));
    }

    private int slot(long x, long y) {
        long h = hash(x, y);
        int upper = (int) (h >>> 32);
        int mask = table.length - 1;
        int s = (int) h & mask;
        while (table[s] != -1 && ((int) (table[s] >>> 32) != upper || !isIn((int) table[s], x, y))) {
            s = s + 1 & mask;
        }
        return s;
    }

    /** Four cells that make a square lie side by side in the table, so that a look across the border stays near. */
    private static long hash(long x, long y) {
        long h = (x >> 1) * 0x9E3779B97F4A7C15L ^ Long.rotateLeft((y >> 1) * 0xC2B2AE3D27D4EB4FL, 31);
        h ^= h >>> 32;
        return h ^ (x & 1) << 1 ^ y & 1;
    }

    private boolean isIn(int point, long x, long y) {
        return index(points[point].x()) == x && index(points[point].y()) == y;
    }

    private void insert(int i) {
        if (used * 2 > table.length) {
            grow();
        }
        long x = index(points[i].x());
        long y = index(points[i].y());
        int s = slot(x, y);
        used += table[s] == -1 ? 1 : 0;
        nextInCell[i] = (int) table[s];
        table[s] = hash(x, y) >>> 32 << 32 | i;
    }

    private void grow() {
        long[] old = table;
        table = filled(old.length * 4);
        for (long entry : old) {
            if (entry != -1) {
                Point p = points[(int) entry];
                table[slot(index(p.x()), index(p.y()))] = entry;
            }
        }
    }

    /** The node of a point: the number of one of its points. */
    int find(int i) {
        int at = i;
        while (parent[at] != at) {
            parent[at] = parent[parent[at]];
            at = parent[at];
        }
        return at;
    }

    /** Number of points of each node, at the number that {@link #find} gives. */
    int[] members() {
        int[] members = new int[size];
        for (int i = 0; i < size; i++) {
            members[find(i)]++;
        }
        return members;
    }

    Point point(int i) {
        return points[i];
    }

    int size() {
        return size;
    }

    private void noteGap(int i, double widthMm) {
        if (gaps > 0 && gapPoints[gaps - 1] == i) {
            gapWidths[gaps - 1] = Math.max(gapWidths[gaps - 1], widthMm);
            return;
        }
        if (gaps == gapPoints.length) {
            gapPoints = Arrays.copyOf(gapPoints, gaps * 2 + 16);
            gapWidths = Arrays.copyOf(gapWidths, gaps * 2 + 16);
        }
        gapPoints[gaps] = i;
        gapWidths[gaps++] = widthMm;
    }

    /** Points that were taken as one with others a little way off, and how far. */
    List<Gap> gaps() {
        List<Gap> list = new ArrayList<>(gaps);
        for (int k = 0; k < gaps; k++) {
            list.add(new Gap(points[gapPoints[k]], gapWidths[k]));
        }
        return list;
    }
}
