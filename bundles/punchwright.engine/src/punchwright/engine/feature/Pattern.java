// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.feature;

import java.util.List;

import punchwright.engine.geometry.Point;

/**
 * Equal openings that lie regularly.
 *
 * @param kind     how they lie
 * @param features numbers of the features, rising
 * @param origin   centre of the opening at the corner of a grid or at one end of a row; centre of a bolt circle
 * @param angleDeg direction of the rows, from the centre to the first hole of a bolt circle; 0 to below 360
 * @param pitchMm  distance in a row; diameter of a bolt circle
 * @param rowPitchMm distance of the rows; 0 for a row and a bolt circle
 * @param columns  openings in a row, or on the circle
 * @param rows     number of rows; 1 for a row and a bolt circle
 */
public record Pattern(Kind kind, List<Integer> features, Point origin, double angleDeg, double pitchMm, double rowPitchMm,
        int columns, int rows) {

    /** How the openings lie. */
    public enum Kind {
        ROW, GRID,
        /** Every second row is shifted by half a pitch. */
        STAGGERED_GRID, BOLT_CIRCLE
    }

    public Pattern {
        features = List.copyOf(features);
    }
}
