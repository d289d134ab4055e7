// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.layouts;

import punchwright.engine.geometry.Pose;

/**
 * One piece on a sheet.
 *
 * @param partId   id of its part
 * @param xMm      x on the sheet of the part's origin after turning
 * @param yMm      y on the sheet of the part's origin after turning
 * @param angleDeg degrees counter-clockwise
 * @param locked   whether nesting goes around it
 */
public record Piece(String partId, double xMm, double yMm, double angleDeg, boolean locked) {

    /** Where it lies. */
    public Pose pose() {
        return Pose.at(xMm, yMm, angleDeg);
    }

    /** The same elsewhere. */
    public Piece at(double x, double y) {
        return new Piece(partId, x, y, angleDeg, locked);
    }

    /** The same, locked or not. */
    public Piece locked(boolean lock) {
        return new Piece(partId, xMm, yMm, angleDeg, lock);
    }
}
