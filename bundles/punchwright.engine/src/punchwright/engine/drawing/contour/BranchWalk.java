// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.contour;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Segment;

/**
 * Contours of a component in which more than two pieces meet at a node: its outer boundary (the face of the plane graph
 * that lies outside), cut into simple loops where it passes a node twice; then the same for what is left inside.
 */
final class BranchWalk {

    private static final int MOST_ROUNDS = 50;

    private final ChainGraph graph;
    private final List<Contour> loops = new ArrayList<>();
    private final List<Integer> left = new ArrayList<>();
    private final Map<Integer, Integer> busy = new HashMap<>();
    private final Set<Integer> busyInOrder = new LinkedHashSet<>();
    private final List<Integer> pieces;

    BranchWalk(ChainGraph graph, List<Integer> pieces) {
        this.graph = graph;
        this.pieces = pieces;
    }

    void run() {
        for (int k : pieces) {
            note(graph.from[k]);
            note(graph.to[k]);
        }
        List<Integer> rest = pieces;
        for (int round = 0; round < MOST_ROUNDS && !rest.isEmpty(); round++) {
            boolean[] seen = new boolean[graph.pieces.size()];
            for (int k : rest) {
                if (graph.alive[k] && !seen[k]) {
                    outerBoundary(graph.component(k, seen));
                }
            }
            left.addAll(graph.peel(rest));
            rest = rest.stream().filter(k -> graph.alive[k]).toList();
        }
        rest.forEach(graph::remove);
        left.addAll(rest);
    }

    private void note(int node) {
        if (graph.degree(node) > 2) {
            busy.put(node, graph.degree(node));
            busyInOrder.add(node);
        }
    }

    private void outerBoundary(List<Integer> component) {
        PlaneFaces faces = new PlaneFaces(graph, component);
        List<Integer> walk = faces.outerFace();
        Map<Integer, Integer> times = new HashMap<>();
        walk.forEach(h -> times.merge(h >> 1, 1, Integer::sum));
        List<Integer> once = new ArrayList<>();
        for (int half : walk) {
            int piece = half >> 1;
            if (times.get(piece) == 1) {
                once.add(half);
            }
            if (graph.alive[piece]) {
                graph.remove(piece);
                if (times.get(piece) > 1) {
                    left.add(piece);
                }
            }
        }
        simpleLoops(once);
    }

    /** Cuts a closed walk into loops that pass each node once. */
    private void simpleLoops(List<Integer> walk) {
        List<Integer> path = new ArrayList<>();
        Map<Integer, Integer> position = new HashMap<>();
        for (int half : walk) {
            position.put(startOf(half), path.size());
            path.add(half);
            Integer begin = position.get(endOf(half));
            if (begin != null) {
                List<Integer> loop = path.subList(begin, path.size());
                addLoop(loop);
                loop.forEach(h -> position.remove(startOf(h)));
                loop.clear();
            }
        }
        path.forEach(h -> left.add(h >> 1));
    }

    private int startOf(int half) {
        return (half & 1) == 0 ? graph.from[half >> 1] : graph.to[half >> 1];
    }

    private int endOf(int half) {
        return startOf(half ^ 1);
    }

    private void addLoop(List<Integer> halves) {
        List<Segment> segments = new ArrayList<>();
        for (int half : halves) {
            segments.addAll(graph.pieces.get(half >> 1).directed((half & 1) == 0));
        }
        loops.add(new Contour(segments));
    }

    List<Contour> loops() {
        return loops;
    }

    /** Pieces that belong to no loop. */
    List<Integer> left() {
        return left;
    }

    Set<Integer> busyNodes() {
        return busyInOrder;
    }

    int degreeOf(int node) {
        return busy.get(node);
    }
}
