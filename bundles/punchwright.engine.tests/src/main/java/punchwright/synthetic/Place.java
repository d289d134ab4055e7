// SPDX-License-Identifier: EPL-2.0
package punchwright.synthetic;

import java.util.List;

import punchwright.engine.geometry.Point;

/** Turned by an angle about the origin, then shifted. */
record Place(double x, double y, double angleDeg) {

    Point of(Point p) {
        double rad = Math.toRadians(angleDeg);
        return new Point(x + p.x() * Math.cos(rad) - p.y() * Math.sin(rad), y + p.x() * Math.sin(rad) + p.y() * Math.cos(rad));
    }

    Curve of(Curve c) {
        return new Curve(of(c.a()), c.m() == null ? null : of(c.m()), of(c.b()));
    }

    List<Curve> of(List<Curve> curves) {
        return curves.stream().map(this::of).toList();
    }

    double of(double ownAngleDeg) {
        return ((ownAngleDeg + angleDeg) % 360 + 360) % 360;
    }
}
