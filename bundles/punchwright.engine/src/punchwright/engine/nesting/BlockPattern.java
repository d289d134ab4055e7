// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import punchwright.engine.nesting.boxes.Work;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Many pieces of one part in a rectangle: nested blocks of its orientations.
 *
 * <p>A block is a plain grid of one orientation against the lower left corner; what is left to the right of it (full
 * height) and above it, or above it (full length) and to the right of it, is filled the same way, to a limited depth. This
 * holds the plain grids and all mixed two-block patterns. Every box is grown by the web, and so is the rectangle.
 */
final class BlockPattern {

    private record Key(int length, int width, int depth) {
    }

    /** Pieces in a rectangle and how: {@code columns} x {@code rows} of a turn, then two sub-rectangles. */
    private record Node(int count, int turn, int columns, int rows, Node beside, Node above, boolean fullHeight) {
    }

    private static final Node EMPTY = new Node(0, 0, 0, 0, null, null, true);

    private final List<Turn> turns;
    private final int part;
    private final int web;
    private final Work work;
    private final Map<Key, Node> known = new HashMap<>();

    BlockPattern(int part, BoxPart boxes, Work work) {
        this.part = part;
        this.turns = boxes.turns();
        this.web = Ticks.of(boxes.part().webMm());
        this.work = work;
    }

    /** The pattern with the most pieces found, ordered by x and then y, so that a part of it leaves one remnant. */
    List<BoxPlacement> fill(Region region) {
        List<BoxPlacement> out = new ArrayList<>();
        if (region.row()) {
            return row(region);
        }
        if (region.length() > 0 && region.width() > 0) {
            int length = region.length() + web;
            int width = region.width() + web;
            place(best(length, width, depth(length, width)), 0, 0, out);
        }
        out.sort(Comparator.comparingInt(BoxPlacement::x).thenComparingInt(BoxPlacement::y));
        return out;
    }

    /** One row of the shortest turn that fits across. */
    private List<BoxPlacement> row(Region region) {
        List<BoxPlacement> out = new ArrayList<>();
        int best = -1;
        for (int t = 0; t < turns.size(); t++) {
            boolean shorter = best < 0 || turns.get(t).length() < turns.get(best).length();
            best = turns.get(t).width() <= region.width() && shorter ? t : best;
        }
        for (int x = 0; best >= 0 && x + turns.get(best).length() <= region.length(); x += turns.get(best).length() + web) {
            out.add(new BoxPlacement(part, best, x, 0));
        }
        return out;
    }

    private int depth(int length, int width) {
        int shortest = turns.stream().mapToInt(t -> Math.min(t.length(), t.width()) + web).min().orElseThrow();
        return Math.max(length, width) / Math.max(1, shortest) <= 40 ? 3 : 2;
    }

    private Node best(int length, int width, int depth) {
        Key key = new Key(length, width, depth);
        Node found = known.get(key);
        if (found == null) {
            found = search(length, width, depth);
            known.put(key, found);
        }
        return found;
    }

    private Node search(int length, int width, int depth) {
        Node best = EMPTY;
        for (int t = 0; t < turns.size(); t++) {
            int columns = length / (turns.get(t).length() + web);
            int rows = width / (turns.get(t).width() + web);
            if (columns > 0 && rows > 0) {
                best = more(best, new Node(columns * rows, t, columns, rows, EMPTY, EMPTY, true));
                best = depth > 0 ? more(best, split(t, columns, rows, length, width, depth - 1)) : best;
            }
        }
        return best;
    }

    /** All block sizes of one turn: fewer columns at full rows, then fewer rows at full columns. */
    private Node split(int t, int columns, int rows, int length, int width, int depth) {
        Node best = EMPTY;
        int bl = turns.get(t).length() + web;
        int bw = turns.get(t).width() + web;
        work.add(columns + rows);
        for (int c = columns; c >= 1; c--) {
            Node beside = best(length - c * bl, width, depth);
            Node above = best(c * bl, width - rows * bw, depth);
            best = more(best, new Node(c * rows + beside.count + above.count, t, c, rows, beside, above, true));
        }
        for (int r = rows; r >= 1; r--) {
            Node beside = best(length - columns * bl, r * bw, depth);
            Node above = best(length, width - r * bw, depth);
            best = more(best, new Node(columns * r + beside.count + above.count, t, columns, r, beside, above, false));
        }
        return best;
    }

    private static Node more(Node a, Node b) {
        return b.count > a.count ? b : a;
    }

    private void place(Node node, int x, int y, List<BoxPlacement> out) {
        if (node.count == 0) {
            return;
        }
        int bl = turns.get(node.turn).length() + web;
        int bw = turns.get(node.turn).width() + web;
        for (int c = 0; c < node.columns; c++) {
            for (int r = 0; r < node.rows; r++) {
                out.add(new BoxPlacement(part, node.turn, x + c * bl, y + r * bw));
            }
        }
        place(node.beside, x + node.columns * bl, y, out);
        place(node.above, x, y + node.rows * bw, out);
    }
}
