// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.dxf;

import punchwright.engine.geometry.Point;

/** A piece of an ellipse: centre + u cos a + v sin a, a from {@code start} over {@code sweep} radians; in mm. */
record EllipseQuarter(Point center, Point u, Point v, double start, double sweep) implements SmoothCurve {

    @Override
    public Point at(double t) {
        double a = start + sweep * t;
        return center.plus(u.times(Math.cos(a))).plus(v.times(Math.sin(a)));
    }

    @Override
    public Point derivativeAt(double t) {
        double a = start + sweep * t;
        return v.times(Math.cos(a)).minus(u.times(Math.sin(a))).times(Math.signum(sweep));
    }
}
