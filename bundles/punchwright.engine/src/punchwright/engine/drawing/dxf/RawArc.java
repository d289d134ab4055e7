// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.dxf;

/** A circular or elliptic arc: centre + u cos t + v sin t, with t from {@code start} over {@code sweep} radians. */
record RawArc(Vec3 center, Vec3 u, Vec3 v, double start, double sweep) implements RawCurve {

    @Override
    public RawArc mapped(Frame frame) {
        return frame == Frame.IDENTITY ? this
                : new RawArc(frame.point(center), frame.vector(u), frame.vector(v), start, sweep);
    }
}
