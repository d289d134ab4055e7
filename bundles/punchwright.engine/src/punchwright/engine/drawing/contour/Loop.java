// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.contour;

import punchwright.engine.geometry.Contour;

/**
 * A closed contour.
 *
 * @param exact    drawn as lines and arcs, not approximated
 * @param single   the entity that closes by itself; null for a contour of several
 * @param doubtful out of a knot where more than two lines meet, or of lines that had to be cut
 */
record Loop(Contour contour, boolean exact, Piece single, boolean doubtful) {

    static Loop of(Piece single, boolean doubtful) {
        return new Loop(new Contour(single.segments()), single.exact(), single, doubtful);
    }
}
