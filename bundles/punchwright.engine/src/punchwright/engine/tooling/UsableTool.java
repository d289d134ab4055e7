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

    /** Off by less than this share of the need counts as fitting; a hit that is off by all of it costs this much rework. */
    private static final double FITS = 0.15;
    private static final double REWORK_SECONDS = 1;

    /**
     * What a hit costs in quality, in seconds: burr and rollover of a die that does not fit, so that a fitting one is preferred.
     * An estimate, no source.
     */
    double qualitySeconds() {
        double off = clearanceNeedMm <= 0 ? 0 : Math.abs(clearanceMm - clearanceNeedMm) / clearanceNeedMm;
        return REWORK_SECONDS * Math.max(0, off - FITS);
    }

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
