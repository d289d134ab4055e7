// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.dxf;

import java.util.List;

/**
 * A B-spline, rational where the weights differ.
 *
 * @param degree  1 to 15
 * @param knots   number of control points + degree + 1, not falling
 * @param weights one for each control point, above 0
 */
record RawSpline(int degree, double[] knots, List<Vec3> control, double[] weights) implements RawCurve {

    @Override
    public int weight() {
        return 8 * control.size();
    }

    @Override
    public RawSpline mapped(Frame frame) {
        return frame == Frame.IDENTITY ? this
                : new RawSpline(degree, knots, control.stream().map(frame::point).toList(), weights);
    }
}
