// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.feature;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import punchwright.engine.geometry.Bounds;
import punchwright.engine.geometry.BoxIndex;
import punchwright.engine.geometry.Point;

/**
 * Grids, staggered grids and rows among equal openings. The commonest step between neighbours gives the rows, the
 * commonest step to another row the rest; openings linked by these steps make a grid when its rectangle is full.
 */
final class GridSearch {

    private static final int LEAST_ROW = 3;
    private static final int NEIGHBOURS = 8;

    private final List<Feature> features;
    private final double toleranceMm;
    private final BoxIndex index;
    private final boolean[] taken;
    private final List<Pattern> found = new ArrayList<>();

    GridSearch(List<Feature> features, double toleranceMm) {
        this.features = features;
        this.toleranceMm = toleranceMm;
        this.index = new BoxIndex(features.stream().map(f -> Bounds.EMPTY.including(f.center())).toList());
        this.taken = new boolean[features.size()];
    }

    List<Pattern> patterns() {
        if (features.size() < LEAST_ROW) {
            return List.of();
        }
        List<Point> steps = commonSteps();
        for (Point step : steps) {
            for (Point across : steps) {
                if (Math.abs(step.cross(across)) > 0.3 * step.norm() * across.norm()) {
                    collect(step, across);
                }
            }
        }
        steps.forEach(step -> collect(step, null));
        found.sort((a, b) -> Integer.compare(a.features().get(0), b.features().get(0)));
        return found;
    }

    /** Steps to near neighbours, commonest first, each with x above 0 (or x = 0 and y above 0). */
    private List<Point> commonSteps() {
        Map<String, List<Point>> steps = new LinkedHashMap<>();
        for (int i = 0; i < features.size(); i++) {
            for (Point d : nearSteps(i)) {
                String key = Math.round(d.x() / (2 * toleranceMm)) + " " + Math.round(d.y() / (2 * toleranceMm));
                steps.computeIfAbsent(key, k -> new ArrayList<>()).add(d);
            }
        }
        return steps.values().stream().filter(s -> s.size() >= 2).sorted((a, b) -> b.size() - a.size()).limit(6)
                .map(s -> s.stream().reduce(Point.ORIGIN, Point::plus).times(1.0 / s.size())).toList();
    }

    private List<Point> nearSteps(int i) {
        Point at = features.get(i).center();
        List<Point> near = new ArrayList<>();
        for (double reach = firstReach(); near.size() < NEIGHBOURS && near.size() < features.size() - 1; reach *= 2) {
            near.clear();
            index.query(Bounds.EMPTY.including(at).grown(reach), j -> {
                if (j != i) {
                    near.add(features.get(j).center().minus(at));
                }
            });
        }
        near.sort((a, b) -> Double.compare(a.norm(), b.norm()));
        return near.stream().limit(NEIGHBOURS).filter(d -> d.x() > toleranceMm || Math.abs(d.x()) <= toleranceMm && d.y() > 0).toList();
    }

    private double firstReach() {
        return Math.max(1, features.get(0).lengthMm());
    }

    /** Finds linked openings not yet taken and adds a pattern when they fill their rectangle. */
    private void collect(Point step, Point across) {
        boolean[] seen = taken.clone();
        for (int i = 0; i < features.size(); i++) {
            if (!seen[i]) {
                Map<Integer, int[]> cells = linked(i, step, across, seen);
                Pattern pattern = new GridForm(features, cells, step, across).pattern();
                if (pattern != null) {
                    found.add(pattern);
                    cells.keySet().forEach(k -> taken[k] = true);
                }
            }
        }
    }

    /** Openings reached by the steps, with their column and row counted from the start. */
    private Map<Integer, int[]> linked(int start, Point step, Point across, boolean[] seen) {
        Map<Integer, int[]> cells = new LinkedHashMap<>();
        Deque<Integer> open = new ArrayDeque<>(List.of(start));
        cells.put(start, new int[] {0, 0});
        seen[start] = true;
        while (!open.isEmpty()) {
            int i = open.remove();
            int[] cell = cells.get(i);
            visit(i, step, cell[0] + 1, cell[1], cells, open, seen);
            visit(i, step.times(-1), cell[0] - 1, cell[1], cells, open, seen);
            if (across != null) {
                visit(i, across, cell[0], cell[1] + 1, cells, open, seen);
                visit(i, across.times(-1), cell[0], cell[1] - 1, cells, open, seen);
            }
        }
        return cells;
    }

    private void visit(int from, Point step, int column, int row, Map<Integer, int[]> cells, Deque<Integer> open, boolean[] seen) {
        Point target = features.get(from).center().plus(step);
        index.query(Bounds.EMPTY.including(target).grown(toleranceMm), j -> {
            if (!seen[j]) {
                seen[j] = true;
                cells.put(j, new int[] {column, row});
                open.add(j);
            }
        });
    }
}
