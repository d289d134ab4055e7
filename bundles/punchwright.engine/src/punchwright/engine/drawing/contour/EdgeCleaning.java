// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.contour;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import punchwright.engine.geometry.Point;

/** Clusters the ends of open pieces and drops pieces that lie exactly on another. */
final class EdgeCleaning {

    /** Curves between the same two ends that are compared with each other. */
    private static final int MOST_COMPARED = 200;

    private final double toleranceMm;
    private final List<Point> places = new ArrayList<>();
    private double nearMm;

    EdgeCleaning(double toleranceMm) {
        this.toleranceMm = toleranceMm;
    }

    Edges clean(List<Piece> pieces) {
        Nodes nodes = new Nodes(toleranceMm, 2 * pieces.size());
        for (Piece p : pieces) {
            nodes.add(p.start());
            nodes.add(p.end());
        }
        int n = pieces.size();
        int[] from = new int[n];
        int[] to = new int[n];
        for (int k = 0; k < n; k++) {
            from[k] = nodes.find(2 * k);
            to[k] = nodes.find(2 * k + 1);
        }
        boolean[] dropped = duplicates(pieces, from, to);
        List<Piece> closed = new ArrayList<>();
        List<Piece> open = new ArrayList<>(n);
        int[] a = new int[n];
        int[] b = new int[n];
        for (int k = 0; k < n; k++) {
            if (!dropped[k] && from[k] == to[k]) {
                closed.add(pieces.get(k));
            } else if (!dropped[k]) {
                a[open.size()] = from[k];
                b[open.size()] = to[k];
                open.add(pieces.get(k));
            }
        }
        int m = open.size();
        return new Edges(new ChainGraph(open, nodes, Arrays.copyOf(a, m), Arrays.copyOf(b, m)), closed, nodes.gaps(), places,
                nearMm);
    }

    /** Pieces between the same two nodes with the same length and middle as an earlier one. */
    private boolean[] duplicates(List<Piece> pieces, int[] from, int[] to) {
        int n = pieces.size();
        long[] key = new long[n];
        for (int k = 0; k < n; k++) {
            key[k] = (long) Math.min(from[k], to[k]) << 32 | Math.max(from[k], to[k]);
        }
        long[] repeated = repeated(key);
        boolean[] dropped = new boolean[n];
        Map<Long, List<Integer>> keptBetween = new HashMap<>();
        Set<PieceKey> keys = new HashSet<>();
        for (int k = 0; k < n; k++) {
            if (repeated.length > 0 && Arrays.binarySearch(repeated, key[k]) >= 0) {
                List<Integer> kept = keptBetween.computeIfAbsent(key[k], x -> new ArrayList<>());
                int candidate = k;
                boolean newKey = keys.add(PieceKey.of(pieces.get(k), toleranceMm));
                dropped[k] = kept.stream().limit(MOST_COMPARED).anyMatch(i -> same(pieces.get(i), pieces.get(candidate)));
                if (dropped[k]) {
                    places.add(pieces.get(k).middle());
                    nearMm += newKey ? pieces.get(k).lengthMm() : 0;
                } else {
                    kept.add(k);
                }
            }
        }
        return dropped;
    }

    /** Values that occur more than once, rising. */
    private static long[] repeated(long[] values) {
        long[] sorted = values.clone();
        Arrays.parallelSort(sorted);
        int m = 0;
        for (int i = 1; i < sorted.length; i++) {
            if (sorted[i] == sorted[i - 1] && (m == 0 || sorted[m - 1] != sorted[i])) {
                sorted[m++] = sorted[i];
            }
        }
        return Arrays.copyOf(sorted, m);
    }

    private boolean same(Piece a, Piece b) {
        return Math.abs(a.lengthMm() - b.lengthMm()) <= 2 * toleranceMm && a.middle().distance(b.middle()) <= 2 * toleranceMm;
    }
}
