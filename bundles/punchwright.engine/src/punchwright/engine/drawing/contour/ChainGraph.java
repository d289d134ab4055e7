// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.contour;

import java.util.ArrayList;
import java.util.List;

import punchwright.engine.geometry.Point;

/** Open pieces as the edges of a graph whose nodes are their clustered end points. */
final class ChainGraph {

    final List<Piece> pieces;
    final int[] from;
    final int[] to;
    final boolean[] alive;
    private final Nodes nodes;
    private final int[] degree;
    private final int[] first;
    private final int[] ends;
    private final boolean[] visited;

    ChainGraph(List<Piece> pieces, Nodes nodes, int[] from, int[] to) {
        this.pieces = pieces;
        this.nodes = nodes;
        this.from = from;
        this.to = to;
        this.alive = new boolean[pieces.size()];
        this.degree = new int[nodes.size()];
        this.first = new int[nodes.size() + 1];
        this.ends = new int[2 * pieces.size()];
        this.visited = new boolean[nodes.size()];
        java.util.Arrays.fill(alive, true);
        index();
    }

    private void index() {
        for (int k = 0; k < from.length; k++) {
            degree[from[k]]++;
            degree[to[k]]++;
        }
        for (int n = 0; n < degree.length; n++) {
            first[n + 1] = first[n] + degree[n];
        }
        int[] at = first.clone();
        for (int k = 0; k < from.length; k++) {
            ends[at[from[k]]++] = k;
            ends[at[to[k]]++] = k;
        }
    }

    int degree(int node) {
        return degree[node];
    }

    Point point(int node) {
        return nodes.point(node);
    }

    int other(int piece, int node) {
        return from[piece] == node ? to[piece] : from[piece];
    }

    /** Living pieces at a node. */
    List<Integer> at(int node) {
        List<Integer> list = new ArrayList<>(2);
        for (int i = first[node]; i < first[node + 1]; i++) {
            if (alive[ends[i]]) {
                list.add(ends[i]);
            }
        }
        return list;
    }

    void remove(int piece) {
        alive[piece] = false;
        degree[from[piece]]--;
        degree[to[piece]]--;
    }

    /** Takes away, again and again, pieces with an end that leads nowhere; gives them in the order of removal. */
    List<Integer> peel() {
        List<Integer> peeled = new ArrayList<>();
        for (int k = 0; k < from.length; k++) {
            peelFrom(k, from[k], peeled);
            peelFrom(k, to[k], peeled);
        }
        return peeled;
    }

    /** The same for some of the pieces only. */
    List<Integer> peel(List<Integer> some) {
        List<Integer> peeled = new ArrayList<>();
        for (int k : some) {
            peelFrom(k, from[k], peeled);
            peelFrom(k, to[k], peeled);
        }
        return peeled;
    }

    private void peelFrom(int piece, int start, List<Integer> peeled) {
        int node = start;
        int k = piece;
        while (alive[k] && degree[node] == 1) {
            remove(k);
            peeled.add(k);
            node = other(k, node);
            if (degree[node] != 1) {
                return;
            }
            k = at(node).get(0);
        }
    }

    /**
     * The cycle through a piece when every node on it has two ends: piece numbers in order, as ones' complement where a
     * piece is passed backwards; null when a busier node comes first.
     */
    int[] simpleCycle(int start) {
        int[] cycle = new int[8];
        int n = 0;
        int k = start;
        int node = from[start];
        do {
            if (degree[node] != 2) {
                return null;
            }
            if (n == cycle.length) {
                cycle = java.util.Arrays.copyOf(cycle, 2 * n);
            }
            cycle[n++] = from[k] == node ? k : ~k;
            node = other(k, node);
            k = otherAt(node, k);
        } while (k >= 0 && k != start);
        return k < 0 ? null : java.util.Arrays.copyOf(cycle, n);
    }

    /** The other living piece at a node with two; -1 when the node has more. */
    private int otherAt(int node, int piece) {
        int other = -1;
        for (int i = first[node]; degree[node] == 2 && i < first[node + 1]; i++) {
            other = alive[ends[i]] && ends[i] != piece ? ends[i] : other;
        }
        return other;
    }

    /** Living pieces connected with this one, itself included, in a fixed order; marks them as seen. */
    List<Integer> component(int start, boolean[] seen) {
        List<Integer> group = new ArrayList<>();
        seen[start] = true;
        group.add(start);
        for (int i = 0; i < group.size(); i++) {
            visit(from[group.get(i)], seen, group);
            visit(to[group.get(i)], seen, group);
        }
        group.forEach(k -> visited[from[k]] = visited[to[k]] = false);
        return group;
    }

    private void visit(int node, boolean[] seen, List<Integer> group) {
        if (visited[node]) {
            return;
        }
        visited[node] = true;
        for (int j : at(node)) {
            if (!seen[j]) {
                seen[j] = true;
                group.add(j);
            }
        }
    }
}
