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
    private Point[] points = new Point[64];
    private int[] parent = new int[64];
    private int[] nextInCell = new int[64];
    private int size;
    private int[] table = filled(256);
    private int used;
    private int[] gapPoints = new int[0];
    private double[] gapWidths = new double[0];
    private int gaps;

    Nodes(double tolerance) {
        this.tolerance = tolerance;
        this.cell = 4 * tolerance;
    }

    private static int[] filled(int n) {
        int[] t = new int[n];
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
                for (int j = table[slot(x, y)]; j >= 0; j = nextInCell[j]) {
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
        long h = x * 0x9E3779B97F4A7C15L ^ Long.rotateLeft(y * 0xC2B2AE3D27D4EB4FL, 31);
        h ^= h >>> 32;
        int mask = table.length - 1;
        int s = (int) h & mask;
        while (table[s] >= 0 && (index(points[table[s]].x()) != x || index(points[table[s]].y()) != y)) {
            s = s + 1 & mask;
        }
        return s;
    }

    private void insert(int i) {
        if (used * 2 > table.length) {
            grow();
        }
        int s = slot(index(points[i].x()), index(points[i].y()));
        used += table[s] < 0 ? 1 : 0;
        nextInCell[i] = table[s];
        table[s] = i;
    }

    private void grow() {
        int[] old = table;
        table = filled(old.length * 4);
        for (int head : old) {
            if (head >= 0) {
                table[slot(index(points[head].x()), index(points[head].y()))] = head;
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
