// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

/**
 * Time of a move from rest to rest with limited speed and equal acceleration and braking (trapezoidal speed).
 * Both axes start together and the move lasts as long as the slower. Source: uniform acceleration, any mechanics text.
 */
public final class AxisMotion {

    private AxisMotion() {
    }

    /**
     * Time in s for {@code distanceMm} of either sign: {@code s/v + v/a} when the speed limit is reached
     * ({@code s >= v^2/a}), else {@code 2 sqrt(s/a)}.
     */
    public static double seconds(Axis axis, double distanceMm) {
        double s = Math.abs(distanceMm);
        double v = axis.maxSpeedMmPerS();
        double a = axis.accelerationMmPerS2();
        return s >= v * v / a ? s / v + v / a : 2 * Math.sqrt(s / a);
    }

    /** Time in s of a simultaneous move of both axes. */
    public static double seconds(Machine machine, double dxMm, double dyMm) {
        return Math.max(seconds(machine.xAxis(), dxMm), seconds(machine.yAxis(), dyMm));
    }
}
