// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.planning;

import punchwright.engine.tooling.ToolingRules;

/**
 * Rules of the shop for a plan; all editable.
 *
 * @param tooling        rules for the choice of tools
 * @param edgeMm         least distance of a part from the sheet's edge
 * @param clampStripMm   strip along the clamped edge without parts, added to the clamps' depth and dead zone when 0
 * @param skeletonMm     least strip of skeleton between two cuts that are not shared, or 2 t if that is more
 * @param workLimit      trial steps of each optimiser
 * @param seed           for choices between equals
 */
public record PlanningRules(ToolingRules tooling, double edgeMm, double clampStripMm, double skeletonMm, long workLimit,
        long seed) {

    /** Common practice, no source. */
    public static final PlanningRules USUAL = new PlanningRules(ToolingRules.USUAL, 12, 0, 4, 2_000_000, 1);
}
