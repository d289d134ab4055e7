// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.dxf;

/**
 * A circular arc in a plane across z, the usual one, in less memory than a {@link RawArc}: from {@code start} over
 * {@code sweep} radians, seen from above.
 */
record RawRound(double x, double y, double z, double radius, double start, double sweep) implements RawCurve {

    RawArc arc() {
        return new RawArc(new Vec3(x, y, z), new Vec3(radius, 0, 0), new Vec3(0, radius, 0), start, sweep);
    }

    @Override
    public RawCurve mapped(Frame frame) {
        return frame == Frame.IDENTITY ? this : arc().mapped(frame);
    }
}
