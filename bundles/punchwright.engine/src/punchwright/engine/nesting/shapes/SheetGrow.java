// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting.shapes;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

import punchwright.engine.nesting.boxes.Work;

/** More pieces into a rectangle that already holds some: the new one is put where it overlaps least, then all are separated. */
public final class SheetGrow {

    /** A piece where it lies. */
    public record At(Piece piece, int turn, double x, double y) {
    }

    private SheetGrow() {
    }

    /**
     * The pieces with one more among them, or null when no room was found.
     *
     * @param effort passes without progress after which the search gives up
     */
    public static List<At> add(List<At> present, Piece more, double length, double width, int effort, Work work, long seed) {
        double area = more.area + present.stream().mapToDouble(a -> a.piece.area).sum();
        boolean fits = false;
        for (Outline o : more.turns) {
            fits |= o.length() <= length && o.width() <= width;
        }
        if (!fits || area > length * width) {
            return null;
        }
        int n = present.size();
        Piece[] pieces = new Piece[n + 1];
        for (int i = 0; i < n; i++) {
            pieces[i] = present.get(i).piece;
        }
        pieces[n] = more;
        Field field = new Field(pieces, length, width, work);
        for (int i = 0; i < n; i++) {
            field.move(i, present.get(i).turn, present.get(i).x, present.get(i).y);
        }
        SplittableRandom random = new SplittableRandom(seed);
        PlaceSearch search = new PlaceSearch(field, random, 150, 0);
        if (!search.find(n, Double.MAX_VALUE)) {
            return null;
        }
        field.move(n, search.bestTurn, search.bestX, search.bestY);
        field.refresh();
        if (field.total() > 0 && !new Separation(field, work, random, effort, 1).run(1)) {
            return null;
        }
        List<At> out = new ArrayList<>();
        for (int i = 0; i <= n; i++) {
            out.add(new At(pieces[i], field.turn[i], field.x[i], field.y[i]));
        }
        return out;
    }
}
