// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.contour;

import punchwright.engine.geometry.Contour;

/**
 * A closed contour.
 *
 * @param exact    drawn as lines and arcs, not approximated
 * @param doubtful out of a knot where more than two lines meet, or of lines that had to be cut
 */
record Loop(Contour contour, boolean exact, boolean doubtful) {
}
