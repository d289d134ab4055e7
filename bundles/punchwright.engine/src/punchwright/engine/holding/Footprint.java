// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.holding;

import punchwright.engine.geometry.Angles;
import punchwright.engine.geometry.Bounds;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Pose;
import punchwright.engine.tooling.Tool;

/**
 * Half the box around a punch on the sheet, never too small: mm along x and y from the tool axis. The box of a shape with
 * several angles of symmetry may be too large, never by more than the circumscribed radius.
 */
record Footprint(double halfXMm, double halfYMm) {

    static Footprint of(Tool tool, double angleDeg) {
        return switch (tool.shape()) {
            case ROUND, COLLAR, COUNTERSINK, ROLLER -> square(tool.lengthMm() / 2);
            // Corners of a hexagon of size s across flats lie at s / sqrt(3), those of a triangle of side s as well.
            case HEXAGON, TRIANGLE -> square(tool.lengthMm() / Math.sqrt(3));
            case CLUSTER -> cluster(tool, angleDeg);
            case FREE_CONTOUR -> contour(tool, angleDeg);
            default -> rectangle(tool.lengthMm(), tool.widthMm(), angleDeg);
        };
    }

    private static Footprint square(double half) {
        return new Footprint(half, half);
    }

    private static Footprint rectangle(double lengthMm, double widthMm, double angleDeg) {
        double c = Math.abs(Angles.cosDeg(angleDeg)) / 2;
        double s = Math.abs(Angles.sinDeg(angleDeg)) / 2;
        return new Footprint(c * lengthMm + s * widthMm, s * lengthMm + c * widthMm);
    }

    private static Footprint cluster(Tool tool, double angleDeg) {
        double single = Math.hypot(tool.lengthMm(), tool.widthMm()) / 2;
        Bounds b = Bounds.EMPTY.including(Point.ORIGIN);
        for (Point p : tool.cluster()) {
            b = b.including(Pose.at(0, 0, angleDeg).apply(p));
        }
        return around(b.grown(single));
    }

    private static Footprint contour(Tool tool, double angleDeg) {
        return tool.freeContour() == null ? square(Math.hypot(tool.lengthMm(), tool.widthMm()) / 2)
                : around(tool.freeContour().moved(Pose.at(0, 0, angleDeg)).bounds());
    }

    private static Footprint around(Bounds b) {
        return new Footprint(Math.max(Math.abs(b.minX()), Math.abs(b.maxX())), Math.max(Math.abs(b.minY()), Math.abs(b.maxY())));
    }
}
