// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.holding;

import java.util.List;

/**
 * Where the clamps hold.
 *
 * @param clampCentersMm  x of the clamp centres in sheet coordinates (of the sheet as it lies now)
 * @param reachFromMm     least sheet x that the tool axis reaches now
 * @param reachToMm       largest sheet x that the tool axis reaches now
 * @param turned          whether the sheet is turned by 180 degrees and clamped on its other long edge
 */
public record ClampArrangement(List<Double> clampCentersMm, double reachFromMm, double reachToMm, boolean turned) {

    public ClampArrangement {
        clampCentersMm = List.copyOf(clampCentersMm);
    }
}
