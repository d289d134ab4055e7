// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.intake;

import punchwright.engine.geometry.Point;

/**
 * A distinct part of a drawing.
 *
 * @param number   1, 2, ... in the order of the drawing
 * @param place    a place in the material of its first copy, in mm of the drawing
 * @param count    how often it is drawn, 1 or more
 * @param mirrored how many of them are drawn from the other face
 * @param lengthMm of its bounding box along X
 * @param widthMm  of its bounding box along Y
 * @param areaMm2  of the material
 * @param openings number of openings
 */
public record FoundPart(int number, Point place, int count, int mirrored, double lengthMm, double widthMm, double areaMm2,
        int openings) {
}
