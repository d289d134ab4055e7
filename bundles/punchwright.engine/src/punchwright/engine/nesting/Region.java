// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

/**
 * The rectangle of a sheet in which parts may lie.
 *
 * @param xMm    lower left corner on the sheet
 * @param yMm    lower left corner on the sheet
 * @param length along x, in ticks; 0 when margins leave nothing
 * @param width  along y, in ticks
 */
record Region(double xMm, double yMm, int length, int width) {

    /** Edge margin all round, the clamp strip instead of it along y = 0 where it is wider. */
    static Region of(SheetOffer offer, NestingJob job) {
        double below = Math.max(job.edgeMm(), job.clampStripMm());
        return new Region(job.edgeMm(), below, Ticks.of(offer.lengthMm() - 2 * job.edgeMm()),
                Ticks.of(offer.widthMm() - job.edgeMm() - below));
    }
}
