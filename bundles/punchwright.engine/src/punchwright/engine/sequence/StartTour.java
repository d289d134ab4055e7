// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.sequence;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * A first tour by the greedy edge rule: the cheapest candidate edges that close no circle and give no node a third
 * neighbour, partners first; the pieces are then joined end to end, each time to the nearest open end.
 * Source: Bentley, ORSA J. Computing 4 (1992) 387-411.
 */
final class StartTour {

    private record Edge(int a, int b, double cost) {
    }

    private final Tour.Metric metric;
    private final int[] first;
    private final int[] second;
    private final int[] end;

    private StartTour(Tour.Metric metric, int n) {
        this.metric = metric;
        this.first = filled(n);
        this.second = filled(n);
        this.end = new int[n];
        Arrays.setAll(end, i -> i);
    }

    static int[] greedy(Tour.Metric metric, int[][] neighbours, int[] partner) {
        StartTour t = new StartTour(metric, partner.length);
        for (int i = 0; i < partner.length; i++) {
            if (partner[i] > i) {
                t.link(i, partner[i]);
            }
        }
        t.candidates(neighbours).forEach(e -> t.tryLink(e.a, e.b));
        return t.joined();
    }

    private List<Edge> candidates(int[][] neighbours) {
        List<Edge> edges = new ArrayList<>();
        for (int a = 0; a < neighbours.length; a++) {
            for (int b : neighbours[a]) {
                edges.add(new Edge(a, b, metric.cost(a, b)));
            }
        }
        edges.sort(Comparator.comparingDouble(Edge::cost));
        return edges;
    }

    private void tryLink(int a, int b) {
        if (second[a] < 0 && second[b] < 0 && end[a] != b && (first[a] < 0 || first[a] != b)) {
            link(a, b);
        }
    }

    /** Links two open ends of different pieces; {@code end} of an open end is the other end of its piece. */
    private void link(int a, int b) {
        int ea = end[a];
        int eb = end[b];
        attach(a, b);
        attach(b, a);
        end[ea] = eb;
        end[eb] = ea;
    }

    private void attach(int node, int to) {
        if (first[node] < 0) {
            first[node] = to;
        } else {
            second[node] = to;
        }
    }

    private int[] joined() {
        int n = first.length;
        int[] open = java.util.stream.IntStream.range(0, n).filter(i -> second[i] < 0).toArray();
        boolean[] used = new boolean[n];
        int[] tour = new int[n];
        int size = 0;
        int start = open[0];
        int left = open.length;
        while (true) {
            size = walk(start, tour, size, used);
            if (size == n) {
                return tour;
            }
            left = compact(open, left, used);
            start = nearest(tour[size - 1], open, left);
        }
    }

    private int walk(int start, int[] tour, int size, boolean[] used) {
        int previous = -1;
        int node = start;
        int at = size;
        while (node >= 0) {
            tour[at++] = node;
            used[node] = true;
            int next = first[node] == previous ? second[node] : first[node];
            previous = node;
            node = next;
        }
        return at;
    }

    private static int compact(int[] open, int left, boolean[] used) {
        int kept = 0;
        for (int i = 0; i < left; i++) {
            if (!used[open[i]]) {
                open[kept++] = open[i];
            }
        }
        return kept;
    }

    private int nearest(int from, int[] open, int left) {
        int best = open[0];
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < left; i++) {
            double cost = metric.cost(from, open[i]);
            if (cost < least) {
                least = cost;
                best = open[i];
            }
        }
        return best;
    }

    private static int[] filled(int n) {
        int[] a = new int[n];
        Arrays.fill(a, -1);
        return a;
    }
}
