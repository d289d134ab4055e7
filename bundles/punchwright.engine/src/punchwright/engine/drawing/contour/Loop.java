// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.contour;

import punchwright.engine.geometry.Bounds;
import punchwright.engine.geometry.Contour;

/**
 * A closed contour.
 *
 * @param bounds   of the contour, asked for often
 * @param exact    drawn as lines and arcs, not approximated
 * @param single   the entity that closes by itself; null for a contour of several
 * @param doubtful out of a knot where more than two lines meet, or of lines that had to be cut
 */
record Loop(Contour contour, Bounds bounds, boolean exact, Piece single, boolean doubtful) {

    static Loop of(Piece single, boolean doubtful) {
        Contour contour = new Contour(single.segments());
        return new Loop(contour, contour.bounds(), single.exact(), single, doubtful);
    }

    /** A loop of several entities. */
    static Loop of(Contour contour, boolean exact, boolean doubtful) {
        return new Loop(contour, contour.bounds(), exact, null, doubtful);
    }
}
