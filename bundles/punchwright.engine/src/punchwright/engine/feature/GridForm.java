// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.feature;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import punchwright.engine.geometry.Angles;
import punchwright.engine.geometry.Point;

/** Decides what linked openings are: a row, a full grid, a full staggered grid, or nothing. */
final class GridForm {

    private static final int LEAST_ROW = 3;
    private static final double SQUARE = 0.01;
    private static final double HALF = 0.02;

    private final List<Feature> features;
    private final Map<Integer, int[]> cells;
    private final Point step;
    private final Point across;

    /** @param across step to the next row; null for single rows */
    GridForm(List<Feature> features, Map<Integer, int[]> cells, Point step, Point across) {
        this.features = features;
        this.cells = cells;
        this.step = step;
        this.across = across;
    }

    Pattern pattern() {
        if (across == null) {
            return cells.size() < LEAST_ROW ? null : pattern(Pattern.Kind.ROW, cells.size(), 1, 0);
        }
        double along = across.dot(step) / step.dot(step);
        double rowPitch = Math.abs(across.cross(step)) / step.norm();
        TreeMap<Integer, int[]> rows = rows();
        if (cells.size() < 4 || rows.size() < 2) {
            return null;
        }
        int columns = rows.firstEntry().getValue()[1] - rows.firstEntry().getValue()[0] + 1;
        if (columns < 2) {
            return null;
        }
        if (Math.abs(along) < SQUARE) {
            return isFull(rows, 0) ? pattern(Pattern.Kind.GRID, columns, rows.size(), rowPitch) : null;
        }
        return Math.abs(Math.abs(along) - 0.5) < HALF && isFull(rows, along) ? pattern(Pattern.Kind.STAGGERED_GRID, columns,
                rows.size(), rowPitch) : null;
    }

    /** First and last column and number of openings of each row. */
    private TreeMap<Integer, int[]> rows() {
        TreeMap<Integer, int[]> rows = new TreeMap<>();
        for (int[] cell : cells.values()) {
            int[] row = rows.computeIfAbsent(cell[1], r -> new int[] {cell[0], cell[0], 0});
            row[0] = Math.min(row[0], cell[0]);
            row[1] = Math.max(row[1], cell[0]);
            row[2]++;
        }
        return rows;
    }

    /** Whether no row has a hole and all begin and end within half a pitch of each other. */
    private boolean isFull(TreeMap<Integer, int[]> rows, double along) {
        double slack = along == 0 ? 1e-9 : 0.5 + HALF * rows.size();
        Map.Entry<Integer, int[]> first = rows.firstEntry();
        for (Map.Entry<Integer, int[]> e : rows.entrySet()) {
            int[] row = e.getValue();
            double shift = (e.getKey() - first.getKey()) * along;
            if (row[2] != row[1] - row[0] + 1 || Math.abs(row[0] + shift - first.getValue()[0]) > slack
                    || Math.abs(row[1] + shift - first.getValue()[1]) > slack) {
                return false;
            }
        }
        return true;
    }

    private Pattern pattern(Pattern.Kind kind, int columns, int rows, double rowPitch) {
        List<Integer> numbers = cells.keySet().stream().map(i -> features.get(i).number()).sorted().toList();
        int origin = cells.keySet().stream().min((a, b) -> cells.get(a)[1] != cells.get(b)[1] ? cells.get(a)[1] - cells.get(b)[1]
                : cells.get(a)[0] - cells.get(b)[0]).orElseThrow();
        return new Pattern(kind, numbers, features.get(origin).center(), Angles.normalizeDeg(Math.toDegrees(step.angleRad())),
                step.norm(), rowPitch, columns, rows);
    }
}
