// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.List;

import punchwright.engine.finding.Finding;

/**
 * A tool with all that a choice needs to know about it for one material, thickness and machine.
 *
 * @param tool            which tool
 * @param footprint       its prepared contour
 * @param forceN          force of a full hit, with the shear of the punch, without reserve
 * @param strippingN      stripping force of that hit
 * @param clearanceNeedMm total clearance by the material's rule
 * @param clearanceMm     nearest total clearance on hand
 * @param turning         whether some seat that takes it turns it to any angle
 * @param wearPerHit      cost of wear of a hit, currency
 * @param hitsLeft        hits before the next grind
 * @param warnings        what is worth knowing when it is used
 */
record UsableTool(Tool tool, Footprint footprint, double forceN, double strippingN, double clearanceNeedMm, double clearanceMm,
        boolean turning, double wearPerHit, double hitsLeft, List<Finding> warnings) {

    String id() {
        return tool.id();
    }

    boolean round() {
        return tool.shape() == ToolShape.ROUND;
    }

    /** Whether it has straight sides at right angles. */
    boolean rectangular() {
        return switch (tool.shape()) {
            case SQUARE, RECTANGLE, SLITTING -> true;
            default -> false;
        };
    }

    double areaMm2() {
        return ToolFootprint.areaMm2(tool);
    }
}
