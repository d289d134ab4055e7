// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.proof;

import punchwright.engine.tooling.Tool;

/** Which angles of a punch look the same. */
final class Symmetry {

    private Symmetry() {
    }

    /** Whether two angles of a tool differ by no more than a slack, in degrees. */
    static boolean same(Tool tool, double aDeg, double bDeg, double slackDeg) {
        double step = stepDeg(tool);
        if (step == 0) {
            return true;
        }
        double d = Math.abs(aDeg - bDeg) % step;
        return Math.min(d, step - d) <= slackDeg;
    }

    /** Angle after which the punch looks the same; 0 for any. */
    private static double stepDeg(Tool t) {
        boolean equal = Math.abs(t.lengthMm() - t.widthMm()) < 1e-9;
        return switch (t.shape()) {
            case ROUND -> 0;
            case SQUARE, CORNER_RADIUS -> 90;
            case RECTANGLE, SLITTING -> equal ? 90 : 180;
            case OBROUND, DOUBLE_FLAT -> 180;
            case HEXAGON -> 60;
            case TRIANGLE -> 120;
            case COLLAR, COUNTERSINK, EMBOSS -> equal ? 0 : 180;
            default -> 360;
        };
    }
}
