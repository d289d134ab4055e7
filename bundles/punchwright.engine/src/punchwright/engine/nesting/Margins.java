// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

/**
 * What stays free along the edges of a sheet, mm. On a bar the edge margin counts at its two ends only and the clamp strip not
 * at all: parts as wide as the bar have its long edges for their own, and the holding decides where the clamps sit.
 *
 * @param edgeMm       least distance of a cut edge to the sheet's edge
 * @param clampStripMm strip along y = 0, the clamped edge
 * @param clampZone    what the strip may hold
 * @param hitReachMm   how far a hit reaches beyond the edge it cuts
 */
public record Margins(double edgeMm, double clampStripMm, ClampZone clampZone, double hitReachMm) {

    /** No part in the clamp strip. */
    public Margins(double edgeMm, double clampStripMm) {
        this(edgeMm, clampStripMm, ClampZone.NO_PART, 0);
    }

    /** Least y of a part that does not lie in the clamp strip. */
    public double belowMm() {
        return Math.max(edgeMm, clampStripMm);
    }
}
