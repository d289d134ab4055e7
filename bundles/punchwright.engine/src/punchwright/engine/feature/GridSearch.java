// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.feature;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
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
    private static final int MOST_STEPS = 8;
    private static final double SAME_AREA = 0.01;

    private final List<Feature> features;
    private final double toleranceMm;
    private final BoxIndex index;
    private final boolean[] taken;
    private final Map<Integer, Integer> positions = new HashMap<>();
    private final List<Pattern> found = new ArrayList<>();
    private int takenCount;

    GridSearch(List<Feature> features, double toleranceMm) {
        this.features = features;
        this.toleranceMm = toleranceMm;
        this.index = new BoxIndex(features.stream().map(f -> Bounds.EMPTY.including(f.center())).toList());
        this.taken = new boolean[features.size()];
        for (int i = 0; i < features.size(); i++) {
            positions.put(features.get(i).number(), i);
        }
    }

    List<Pattern> patterns() {
        if (features.size() < LEAST_ROW) {
            return List.of();
        }
        List<Point> steps = commonSteps();
        List<Point[]> cells = cells(steps);
        for (Pattern best = best(cells); best != null; best = best(cells)) {
            take(best);
        }
        steps.forEach(step -> collect(step, null).forEach(this::take));
        found.sort((a, b) -> Integer.compare(a.features().get(0), b.features().get(0)));
        return found;
    }

    /** Pairs of steps that are far from one direction, the smallest parallelogram first: it leaves no opening out. */
    private static List<Point[]> cells(List<Point> steps) {
        List<Point[]> cells = new ArrayList<>();
        for (Point step : steps) {
            for (Point across : steps) {
                if (Math.abs(step.cross(across)) > 0.3 * step.norm() * across.norm()) {
                    cells.add(new Point[] {step, across});
                }
            }
        }
        cells.sort(Comparator.comparingDouble(c -> Math.abs(c[0].cross(c[1]))));
        return cells;
    }

    /** The grid of most openings not yet taken, of these the one of the smallest pitch; null when there is none. */
    private Pattern best(List<Point[]> cells) {
        Pattern best = null;
        double area = 0;
        for (Point[] cell : cells) {
            double own = Math.abs(cell[0].cross(cell[1]));
            if (best != null && best.features().size() == features.size() - takenCount && own > area * (1 + SAME_AREA)) {
                return best;
            }
            for (Pattern p : collect(cell[0], cell[1])) {
                best = best == null || isBetter(p, best) ? p : best;
            }
            area = own;
        }
        return best;
    }

    private boolean isBetter(Pattern p, Pattern other) {
        int more = p.features().size() - other.features().size();
        return more > 0 || more == 0 && p.pitchMm() < other.pitchMm() - toleranceMm;
    }

    private void take(Pattern pattern) {
        found.add(pattern);
        pattern.features().forEach(n -> taken[positions.get(n)] = true);
        takenCount += pattern.features().size();
    }

    /** Steps to near neighbours, commonest first, each with x above 0 (or x = 0 and y above 0). */
    private List<Point> commonSteps() {
        StepCounter steps = new StepCounter(2 * toleranceMm);
        for (int i = 0; i < features.size(); i++) {
            nearSteps(i).forEach(steps::add);
        }
        return steps.commonest(MOST_STEPS);
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
        return near.stream().limit(NEIGHBOURS).filter(d -> d.x() > toleranceMm || Math.abs(d.x()) <= toleranceMm && d.y() > 0)
                .toList();
    }

    private double firstReach() {
        return Math.max(1, features.get(0).lengthMm());
    }

    /** Patterns among openings not yet taken that are linked by the steps. */
    private List<Pattern> collect(Point step, Point across) {
        boolean[] seen = taken.clone();
        List<Pattern> patterns = new ArrayList<>();
        for (int i = 0; i < features.size(); i++) {
            if (!seen[i]) {
                Map<Integer, int[]> cells = linked(i, step, across, seen);
                Pattern pattern = new GridForm(features, cells, step, across).pattern();
                if (pattern != null) {
                    patterns.add(pattern);
                }
            }
        }
        return patterns;
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

    private void visit(int from, Point step, int column, int row, Map<Integer, int[]> cells, Deque<Integer> open,
            boolean[] seen) {
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
