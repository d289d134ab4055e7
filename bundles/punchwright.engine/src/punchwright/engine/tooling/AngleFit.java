// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.OptionalDouble;

import punchwright.engine.geometry.Angles;

/**
 * Whether a tool can be set to an angle. The one home of this question: the choice of tools asks it in part coordinates, the
 * loading of places asks it again for the angles on the sheet, where parts may have been turned.
 *
 * <p>A contour that repeats n times in a full turn is the same at every {@code 360/n} degrees; a round one at any angle.
 */
public final class AngleFit {

    /** Angles nearer than this count as equal, degrees. */
    public static final double TOLERANCE_DEG = 0.01;

    private AngleFit() {
    }

    /**
     * The angle to set so that the punch lies as at {@code neededDeg}; empty when it cannot.
     *
     * @param turning whether the place (or insert) turns tools to any angle
     */
    public static OptionalDouble angleDeg(Tool tool, boolean turning, double neededDeg) {
        int order = ToolFootprint.symmetryOrder(tool);
        if (order == 0) {
            return OptionalDouble.of(tool.freedom() == AngleFreedom.FIXED ? Angles.normalizeDeg(tool.fixedAngleDeg()) : 0);
        }
        if (turning && tool.freedom() == AngleFreedom.ANY) {
            return OptionalDouble.of(Angles.normalizeDeg(neededDeg));
        }
        int settings = tool.freedom() == AngleFreedom.FIXED ? 1 : 4;
        for (int i = 0; i < settings; i++) {
            double setting = tool.fixedAngleDeg() + 90 * i;
            if (same(setting, neededDeg, order)) {
                return OptionalDouble.of(Angles.normalizeDeg(setting));
            }
        }
        return OptionalDouble.empty();
    }

    /** Whether both angles show the same contour when it repeats {@code order} times in a turn. */
    public static boolean same(double aDeg, double bDeg, int order) {
        if (order == 0) {
            return true;
        }
        double period = 360.0 / order;
        double rest = Angles.normalizeDeg(aDeg - bDeg) % period;
        return Math.min(rest, period - rest) <= TOLERANCE_DEG;
    }

    /** One number for all angles at which the contour looks the same: 0 to below {@code 360/order}, 0 for round. */
    public static double canonicalDeg(double angleDeg, int order) {
        if (order == 0) {
            return 0;
        }
        double period = 360.0 / order;
        double rest = Math.rint(Angles.normalizeDeg(angleDeg) * 1000) / 1000 % period;
        return period - rest <= TOLERANCE_DEG ? 0 : rest;
    }
}
