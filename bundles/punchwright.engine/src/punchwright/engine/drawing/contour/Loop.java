// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.contour;

import punchwright.engine.geometry.Contour;

/** A closed contour with where it comes from: drawn exactly or approximated, simple or out of a branching component. */
record Loop(Contour contour, boolean exact, boolean branching) {
}
