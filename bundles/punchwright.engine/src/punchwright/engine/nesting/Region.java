// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

/**
 * The rectangle of a sheet in which parts may lie.
 *
 * @param xMm    lower left corner on the sheet
 * @param yMm    lower left corner on the sheet
 * @param length along x, in ticks; 0 when margins leave nothing
 * @param width  along y, in ticks
 * @param row    whether parts lie in one row along x, as on a bar
 */
record Region(double xMm, double yMm, int length, int width, boolean row) {

    /** Edge margin all round, the clamp strip instead of it along y = 0 where it is wider; of a bar only its two ends. */
    static Region of(SheetOffer offer, NestingJob job) {
        Margins m = job.margins();
        double below = offer.bar() ? 0 : m.belowMm();
        double above = offer.bar() ? 0 : m.edgeMm();
        return new Region(m.edgeMm(), below, Ticks.of(offer.lengthMm() - 2 * m.edgeMm()),
                Ticks.of(offer.widthMm() - above - below), offer.bar());
    }
}
