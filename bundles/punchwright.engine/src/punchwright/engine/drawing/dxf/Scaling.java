// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.dxf;

import punchwright.engine.geometry.Point;

/**
 * From drawing units to mm, with a shift towards the origin for drawings that lie far off.
 *
 * @param mmPerUnit above 0
 * @param originX   drawing unit coordinate that becomes 0
 * @param originY   drawing unit coordinate that becomes 0
 */
public record Scaling(double mmPerUnit, double originX, double originY) {

    double x(double units) {
        return (units - originX) * mmPerUnit;
    }

    double y(double units) {
        return (units - originY) * mmPerUnit;
    }

    public Point point(double xUnits, double yUnits) {
        return new Point(x(xUnits), y(yUnits));
    }

    Point point(Vec3 v) {
        return new Point(x(v.x()), y(v.y()));
    }

    Point vector(Vec3 v) {
        return new Point(v.x() * mmPerUnit, v.y() * mmPerUnit);
    }
}
