// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

/**
 * Rules of the shop for choosing tools; all editable.
 *
 * @param sizeToleranceMm     largest difference between a feature and a tool that makes it alone
 * @param scallopMm           largest scallop height when nibbling
 * @param overlapMm           least overlap of two slitting or rectangle hits
 * @param microJointMm        width of a micro-joint
 * @param jointsPerPart       micro-joints left on the outer contour, at least
 * @param maxSlugMm           largest side of a loose slug that may be left to fall; larger openings are nibbled away
 * @param forceReserve        factor for worn edges in limit checks, for example 1.2
 */
public record ToolingRules(double sizeToleranceMm, double scallopMm, double overlapMm, double microJointMm,
        int jointsPerPart, double maxSlugMm, double forceReserve) {

    /** Common practice, no source. */
    public static final ToolingRules USUAL = new ToolingRules(0.05, 0.1, 1.5, 0.25, 4, 60, 1.2);
}
