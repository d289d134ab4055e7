// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.contour;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Segment;

/**
 * Faces of a connected plane graph. Half-edge {@code 2k} runs along piece k, {@code 2k + 1} back. The face on the left of
 * a half-edge goes on, at its end, with the next half-edge clockwise from the way back.
 */
final class PlaneFaces {

    private final ChainGraph graph;
    private final List<Integer> pieces;
    private final Map<Integer, Integer> next = new HashMap<>();

    PlaneFaces(ChainGraph graph, List<Integer> pieces) {
        this.graph = graph;
        this.pieces = pieces;
        Map<Integer, List<Integer>> leaving = new LinkedHashMap<>();
        for (int k : pieces) {
            leaving.computeIfAbsent(graph.from[k], n -> new ArrayList<>()).add(2 * k);
            leaving.computeIfAbsent(graph.to[k], n -> new ArrayList<>()).add(2 * k + 1);
        }
        leaving.values().forEach(this::link);
    }

    private void link(List<Integer> halves) {
        double step = Double.POSITIVE_INFINITY;
        for (int half : halves) {
            step = Math.min(step, graph.pieces.get(half >> 1).lengthMm() / 4);
        }
        Map<Integer, Double> angle = new HashMap<>();
        for (int half : halves) {
            angle.put(half, direction(half, step));
        }
        List<Integer> turning = new ArrayList<>(halves);
        turning.sort((a, b) -> Double.compare(angle.get(a), angle.get(b)));
        for (int i = 0; i < turning.size(); i++) {
            int clockwise = turning.get((i + turning.size() - 1) % turning.size());
            next.put(turning.get(i) ^ 1, clockwise);
        }
    }

    private double direction(int half, double step) {
        Piece piece = graph.pieces.get(half >> 1);
        boolean forward = (half & 1) == 0;
        Point start = forward ? piece.start() : piece.end();
        return piece.along(forward ? step : piece.lengthMm() - step).minus(start).angleRad();
    }

    /** The half-edges round the outside, clockwise turned to counter-clockwise. */
    List<Integer> outerFace() {
        Set<Integer> seen = new HashSet<>();
        List<Integer> outer = List.of();
        double least = Double.POSITIVE_INFINITY;
        for (int k : pieces) {
            for (int half = 2 * k; half <= 2 * k + 1; half++) {
                List<Integer> face = face(half, seen);
                double area = doubleArea(face);
                if (!face.isEmpty() && area < least) {
                    least = area;
                    outer = face;
                }
            }
        }
        return outer.reversed().stream().map(h -> h ^ 1).toList();
    }

    private List<Integer> face(int start, Set<Integer> seen) {
        List<Integer> face = new ArrayList<>();
        for (int half = start; seen.add(half); half = next.get(half)) {
            face.add(half);
        }
        return face;
    }

    private double doubleArea(List<Integer> face) {
        double sum = 0;
        for (int half : face) {
            double own = 0;
            for (Segment s : graph.pieces.get(half >> 1).segments()) {
                own += s.sweptDoubleArea();
            }
            sum += (half & 1) == 0 ? own : -own;
        }
        return sum;
    }
}
