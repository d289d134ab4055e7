// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting.shapes;

import java.util.List;

/** Kinds of pieces with the squares that each turn covers, made once for all sheets. */
public final class Stamps {

    private final Piece[] pieces;
    private final double cell;
    private final Stamp[][] stamps;

    /** @param cell side of a square, in the unit of the pieces */
    public Stamps(List<Piece> pieces, double cell) {
        this.pieces = pieces.toArray(Piece[]::new);
        this.cell = cell;
        this.stamps = new Stamp[this.pieces.length][];
        for (int k = 0; k < stamps.length; k++) {
            Outline[] turns = this.pieces[k].turns;
            stamps[k] = new Stamp[turns.length];
            for (int t = 0; t < turns.length; t++) {
                stamps[k][t] = Stamp.of(turns[t], -turns[t].minX, -turns[t].minY, cell);
            }
        }
    }

    int kinds() {
        return pieces.length;
    }

    double cell() {
        return cell;
    }

    Piece piece(int kind) {
        return pieces[kind];
    }

    Stamp of(int kind, int turn) {
        return stamps[kind][turn];
    }
}
