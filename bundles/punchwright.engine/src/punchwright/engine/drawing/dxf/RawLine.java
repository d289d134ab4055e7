// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.dxf;

/** A straight line. */
record RawLine(double x1, double y1, double z1, double x2, double y2, double z2) implements RawCurve {

    static RawLine of(Vec3 a, Vec3 b) {
        return new RawLine(a.x(), a.y(), a.z(), b.x(), b.y(), b.z());
    }

    @Override
    public RawLine mapped(Frame frame) {
        return frame == Frame.IDENTITY ? this : of(frame.point(new Vec3(x1, y1, z1)), frame.point(new Vec3(x2, y2, z2)));
    }
}
