// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.planning;

import java.util.List;

import punchwright.engine.sequence.PrecedenceRule;
import punchwright.engine.sequence.PrecedenceRules;
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
 * @param order          rules of order that the engineer adds to {@link PrecedenceRules#USUAL}
 */
public record PlanningRules(ToolingRules tooling, double edgeMm, double clampStripMm, double skeletonMm, long workLimit,
        long seed, List<PrecedenceRule> order) {

    public PlanningRules {
        order = List.copyOf(order);
    }

    /** With the usual rules of order alone. */
    public PlanningRules(ToolingRules tooling, double edgeMm, double clampStripMm, double skeletonMm, long workLimit,
            long seed) {
        this(tooling, edgeMm, clampStripMm, skeletonMm, workLimit, seed, List.of());
    }

    /** The same with rules of order added. */
    public PlanningRules with(List<PrecedenceRule> added) {
        return new PlanningRules(tooling, edgeMm, clampStripMm, skeletonMm, workLimit, seed, added);
    }

    /** Common practice, no source. */
    public static final PlanningRules USUAL = new PlanningRules(ToolingRules.USUAL, 12, 0, 4, 2_000_000, 1);
}
