// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.contour;

import punchwright.engine.geometry.Contour;

/** A closed contour with where it comes from: drawn exactly or approximated, simple, or out of a branching component or of
 * lines that had to be cut. */
record Loop(Contour contour, boolean exact, boolean branching) {
}
