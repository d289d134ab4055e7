// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import punchwright.engine.geometry.Bounds;
import punchwright.engine.geometry.Pose;
import punchwright.engine.geometry.Shape;

/**
 * A part's bounding box at one allowed angle.
 *
 * @param angleDeg angle of the part
 * @param minX     least x of the turned part, mm
 * @param minY     least y of the turned part, mm
 * @param length   along x, in ticks
 * @param width    along y, in ticks
 */
record Turn(double angleDeg, double minX, double minY, int length, int width) {

    static Turn of(Shape shape, double angleDeg) {
        Bounds b = shape.outer().moved(Pose.at(0, 0, angleDeg)).bounds();
        return new Turn(angleDeg, b.minX(), b.minY(), Ticks.of(b.width()), Ticks.of(b.height()));
    }

    boolean sameSize(Turn other) {
        return length == other.length && width == other.width;
    }

    /** The pose that puts the lower left corner of the box at (x, y) mm. */
    Pose poseAt(double x, double y) {
        return Pose.at(x - minX, y - minY, angleDeg);
    }
}
