// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.holding;

/**
 * What one hit, or several alike, asks of a holding; index 0 as the sheet is loaded, index 1 turned by 180 degrees.
 *
 * @param x         tool axis along the sheet as it lies, mm
 * @param reachedY  whether the tool reaches it across the sheet
 * @param nearEdge  whether a clamp could be in its way
 * @param keepMm    least distance along x from its axis to a clamp's centre, where near the edge
 */
record Need(double[] x, boolean[] reachedY, boolean[] nearEdge, double keepMm) {

    private static final double TOUCH_MM = 1e-6;

    /** Whether the hit can be made with the carriage's zero at sheet x {@code zero}, clamps at {@code zero + u}. */
    boolean met(int side, double zero, double[] clamps, double travelMm) {
        if (!reachedY[side] || x[side] < zero - TOUCH_MM || x[side] > zero + travelMm + TOUCH_MM) {
            return false;
        }
        if (nearEdge[side]) {
            for (double u : clamps) {
                if (Math.abs(x[side] - zero - u) < keepMm - TOUCH_MM) {
                    return false;
                }
            }
        }
        return true;
    }
}
