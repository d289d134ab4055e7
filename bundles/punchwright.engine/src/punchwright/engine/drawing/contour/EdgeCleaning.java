// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.contour;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Clusters the ends of open pieces and drops pieces that lie exactly on another. */
final class EdgeCleaning {

    private final double toleranceMm;
    private int count;

    EdgeCleaning(double toleranceMm) {
        this.toleranceMm = toleranceMm;
    }

    Edges clean(List<Piece> pieces) {
        Nodes nodes = new Nodes(toleranceMm);
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
        List<Piece> open = new ArrayList<>();
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
        return new Edges(new ChainGraph(open, nodes, Arrays.copyOf(a, m), Arrays.copyOf(b, m)), closed, nodes.widestGap(), count);
    }

    private boolean[] duplicates(List<Piece> pieces, int[] from, int[] to) {
        int n = pieces.size();
        double[] length = new double[n];
        long[] key = new long[n];
        for (int k = 0; k < n; k++) {
            length[k] = pieces.get(k).lengthMm();
            key[k] = (long) Math.min(from[k], to[k]) << 32 | Math.max(from[k], to[k]);
        }
        Integer[] order = IntStream.range(0, n).boxed().toArray(Integer[]::new);
        Arrays.sort(order, Comparator.<Integer>comparingLong(k -> key[k]).thenComparingInt(k -> k));
        boolean[] dropped = new boolean[n];
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; !dropped[order[i]] && j < n && key[order[j]] == key[order[i]]; j++) {
                if (!dropped[order[j]] && same(pieces, length, order[i], order[j])) {
                    dropped[order[j]] = true;
                    count++;
                }
            }
        }
        return dropped;
    }

    private boolean same(List<Piece> pieces, double[] length, int i, int j) {
        return Math.abs(length[i] - length[j]) <= 2 * toleranceMm
                && pieces.get(i).middle().distance(pieces.get(j).middle()) <= 2 * toleranceMm;
    }
}
