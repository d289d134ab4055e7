// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.geometry;

import java.util.List;

/**
 * Answers many times whether a point lies inside one contour: a fine polygon with its edges sorted into bands of y, so that
 * a ray meets only the edges of its band. Points closer to the contour than the chord error are not decided reliably.
 */
public final class InsideTest {

    private static final int MOST_ENTRIES_PER_EDGE = 8;
    private static final int MOST_BANDS = 4;

    private final double[] x;
    private final double[] y;
    private final Bounds bounds;
    private final int bands;
    private final int[] first;
    private final int[] entries;

    /** @param chordErrorMm distance of the polygon from the contour at most, above 0 */
    public InsideTest(Contour contour, double chordErrorMm) {
        List<Point> points = Flattening.points(contour, chordErrorMm);
        int n = points.size();
        x = points.stream().mapToDouble(Point::x).toArray();
        y = points.stream().mapToDouble(Point::y).toArray();
        Bounds b = Bounds.EMPTY;
        for (Point p : points) {
            b = b.including(p);
        }
        bounds = b;
        bands = suitableBands(n);
        first = new int[bands + 1];
        entries = sortIntoBands();
    }

    private int suitableBands(int n) {
        int count = Math.max(1, n / 4);
        while (count > 1 && entriesFor(count) > (long) MOST_ENTRIES_PER_EDGE * n) {
            count /= 2;
        }
        return count;
    }

    private long entriesFor(int count) {
        double height = bounds.height();
        double spanned = 0;
        for (int i = 0; i < y.length; i++) {
            spanned += Math.abs(y[i] - y[(i + 1) % y.length]) / height * count + 1;
        }
        return (long) spanned;
    }

    private int band(double yy) {
        double share = bounds.height() == 0 ? 0 : (yy - bounds.minY()) / bounds.height();
        return Math.max(0, Math.min(bands - 1, (int) (share * bands)));
    }

    private int[] sortIntoBands() {
        for (int i = 0; i < y.length; i++) {
            for (int k = low(i); k <= high(i); k++) {
                first[k + 1]++;
            }
        }
        for (int k = 0; k < bands; k++) {
            first[k + 1] += first[k];
        }
        int[] at = first.clone();
        int[] sorted = new int[first[bands]];
        for (int i = 0; i < y.length; i++) {
            for (int k = low(i); k <= high(i); k++) {
                sorted[at[k]++] = i;
            }
        }
        return sorted;
    }

    private int low(int i) {
        return band(Math.min(y[i], y[(i + 1) % y.length]));
    }

    private int high(int i) {
        return band(Math.max(y[i], y[(i + 1) % y.length]));
    }

    /** Number of corners of the polygon. */
    public int corners() {
        return x.length;
    }

    /**
     * Whether no edge of the polygon comes near the box, so that all its points lie on one side. Answers false without a look
     * when the box spans many bands.
     */
    public boolean isClearOf(Bounds box) {
        int lowest = band(box.minY());
        int highest = band(box.maxY());
        boolean clear = highest - lowest < MOST_BANDS;
        for (int e = first[lowest]; clear && e < first[highest + 1]; e++) {
            int i = entries[e];
            int j = i + 1 == y.length ? 0 : i + 1;
            clear = Math.min(x[i], x[j]) > box.maxX() || Math.max(x[i], x[j]) < box.minX()
                    || Math.min(y[i], y[j]) > box.maxY() || Math.max(y[i], y[j]) < box.minY();
        }
        return clear;
    }

    /** Even-odd rule with a ray to the right. */
    public boolean contains(Point p) {
        if (!bounds.contains(p)) {
            return false;
        }
        boolean inside = false;
        int k = band(p.y());
        for (int e = first[k]; e < first[k + 1]; e++) {
            int i = entries[e];
            int j = i + 1 == y.length ? 0 : i + 1;
            if (y[i] > p.y() != y[j] > p.y() && p.x() < (x[j] - x[i]) * (p.y() - y[i]) / (y[j] - y[i]) + x[i]) {
                inside = !inside;
            }
        }
        return inside;
    }
}
