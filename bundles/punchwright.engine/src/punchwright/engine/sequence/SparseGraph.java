// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.sequence;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;

/** A graph of near neighbours with costs; grows by edges; its least spanning tree under charges by Prim with a heap. */
final class SparseGraph {

    private final int n;
    private final Tour.Metric metric;
    private final int[][] to;
    private final double[][] cost;
    private final int[] degree;
    private final Set<Long> known = new HashSet<>();
    private final double[] key;
    private final int[] parent;
    private final int[] heap;
    private final int[] place;
    private int size;

    SparseGraph(int n, int[][] neighbours, Tour.Metric metric) {
        this.n = n;
        this.metric = metric;
        this.to = new int[n][8];
        this.cost = new double[n][8];
        this.degree = new int[n];
        this.key = new double[n];
        this.parent = new int[n];
        this.heap = new int[n];
        this.place = new int[n];
        for (int a = 0; a < n; a++) {
            for (int b : neighbours[a]) {
                add(a, b);
            }
        }
    }

    void add(int[][] edges) {
        for (int i = 0; i < edges[0].length; i++) {
            add(edges[0][i], edges[1][i]);
        }
    }

    private void add(int a, int b) {
        if (known.add((long) Math.min(a, b) * n + Math.max(a, b))) {
            double c = metric.cost(a, b);
            half(a, b, c);
            half(b, a, c);
        }
    }

    private void half(int a, int b, double c) {
        if (degree[a] == to[a].length) {
            to[a] = Arrays.copyOf(to[a], 2 * degree[a]);
            cost[a] = Arrays.copyOf(cost[a], 2 * degree[a]);
        }
        to[a][degree[a]] = b;
        cost[a][degree[a]++] = c;
    }

    /** Length of the tree with charges; adds to the degrees. {@code without} is left out, -1 for none. */
    double leastTree(double[] charge, int[] degrees, int without) {
        Arrays.fill(key, Double.POSITIVE_INFINITY);
        Arrays.fill(parent, -1);
        Arrays.fill(place, -1);
        size = 0;
        if (without >= 0) {
            place[without] = -2;
        }
        int start = without == 0 ? 1 : 0;
        key[start] = 0;
        push(start);
        double sum = 0;
        while (size > 0) {
            int a = pop();
            sum += key[a];
            if (parent[a] >= 0) {
                degrees[a]++;
                degrees[parent[a]]++;
            }
            relax(a, charge);
        }
        return sum;
    }

    private void relax(int a, double[] charge) {
        for (int i = 0; i < degree[a]; i++) {
            int b = to[a][i];
            double c = cost[a][i] + charge[a] + charge[b];
            if (place[b] != -2 && c < key[b]) {
                key[b] = c;
                parent[b] = a;
                if (place[b] < 0) {
                    push(b);
                } else {
                    up(place[b]);
                }
            }
        }
    }

    private void push(int node) {
        heap[size] = node;
        place[node] = size;
        up(size++);
    }

    /** Takes the least; it never comes back. */
    private int pop() {
        int top = heap[0];
        place[top] = -2;
        int last = heap[--size];
        if (size > 0) {
            heap[0] = last;
            place[last] = 0;
            down(0);
        }
        return top;
    }

    private void up(int index) {
        int node = heap[index];
        int i = index;
        while (i > 0 && key[heap[(i - 1) / 2]] > key[node]) {
            heap[i] = heap[(i - 1) / 2];
            place[heap[i]] = i;
            i = (i - 1) / 2;
        }
        heap[i] = node;
        place[node] = i;
    }

    private void down(int index) {
        int node = heap[index];
        int i = index;
        while (2 * i + 1 < size) {
            int child = 2 * i + 1;
            if (child + 1 < size && key[heap[child + 1]] < key[heap[child]]) {
                child++;
            }
            if (key[heap[child]] >= key[node]) {
                break;
            }
            heap[i] = heap[child];
            place[heap[i]] = i;
            i = child;
        }
        heap[i] = node;
        place[node] = i;
    }
}
