// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.proof;

import java.util.ArrayList;
import java.util.List;

import org.locationtech.jts.geom.Envelope;

/** Finds strokes by place: a square grid over their tool axes, searched with the largest reach of any punch. */
final class StrokeGrid {

    private final List<List<Stroke>> cells = new ArrayList<>();
    private final double minX;
    private final double minY;
    private final double size;
    private final int columns;
    private final int rows;
    private final double reach;

    StrokeGrid(List<Stroke> strokes) {
        Envelope all = new Envelope();
        double far = 0;
        for (Stroke s : strokes) {
            all.expandToInclude(s.x(), s.y());
            Envelope b = s.punch().box();
            far = Math.max(far, Math.max(Math.max(b.getMaxX(), -b.getMinX()), Math.max(b.getMaxY(), -b.getMinY())));
        }
        reach = far;
        double area = Math.max(1, all.getWidth()) * Math.max(1, all.getHeight());
        size = Math.max(2, Math.sqrt(4 * area / Math.max(1, strokes.size())));
        minX = strokes.isEmpty() ? 0 : all.getMinX();
        minY = strokes.isEmpty() ? 0 : all.getMinY();
        columns = (int) (all.getWidth() / size) + 1;
        rows = (int) (all.getHeight() / size) + 1;
        for (int i = 0; i < columns * rows; i++) {
            cells.add(null);
        }
        strokes.forEach(this::put);
    }

    private void put(Stroke s) {
        int index = row(s.y()) * columns + column(s.x());
        List<Stroke> cell = cells.get(index);
        if (cell == null) {
            cell = new ArrayList<>(4);
            cells.set(index, cell);
        }
        cell.add(s);
    }

    /** Strokes whose box meets the given one, in no particular order but always the same. */
    List<Stroke> near(Envelope box) {
        List<Stroke> found = new ArrayList<>();
        int toRow = row(box.getMaxY() + reach);
        int toColumn = column(box.getMaxX() + reach);
        for (int r = row(box.getMinY() - reach); r <= toRow; r++) {
            for (int c = column(box.getMinX() - reach); c <= toColumn; c++) {
                addMeeting(cells.get(r * columns + c), box, found);
            }
        }
        return found;
    }

    private static void addMeeting(List<Stroke> cell, Envelope box, List<Stroke> found) {
        if (cell != null) {
            for (Stroke s : cell) {
                if (s.box().intersects(box)) {
                    found.add(s);
                }
            }
        }
    }

    private int column(double x) {
        return Math.clamp((int) Math.floor((x - minX) / size), 0, columns - 1);
    }

    private int row(double y) {
        return Math.clamp((int) Math.floor((y - minY) / size), 0, rows - 1);
    }
}
