// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

/**
 * What decides between layouts beside the price of the sheets; money in the library's currency.
 *
 * @param scrapPerKg       what scrap brings for a kg
 * @param remnantShare     share of the price of its area that a kept remnant is worth, 0 to 1
 * @param keepLengthMm     longer side of the smallest remnant that is kept
 * @param keepWidthMm      shorter side of the smallest remnant that is kept
 * @param handlingPerSheet loading and unloading of a sheet
 * @param perMmCut         machine time for a mm of a part's contours
 * @param sharedCutMm      web at which straight edges of neighbours are one slitting cut and count once; 0: none are
 */
public record NestingCosts(double scrapPerKg, double remnantShare, double keepLengthMm, double keepWidthMm,
        double handlingPerSheet, double perMmCut, double sharedCutMm) {

    /** The price of the sheets alone decides; rests of 300 x 300 mm up are named. */
    public static final NestingCosts SHEETS_ONLY = new NestingCosts(0, 0, 300, 300, 0, 0);

    /** Every edge is a cut of its own. */
    public NestingCosts(double scrapPerKg, double remnantShare, double keepLengthMm, double keepWidthMm, double handlingPerSheet,
            double perMmCut) {
        this(scrapPerKg, remnantShare, keepLengthMm, keepWidthMm, handlingPerSheet, perMmCut, 0);
    }

    /** The same with one cut for neighbours whose edges are that far apart. */
    public NestingCosts sharing(double webMm) {
        return new NestingCosts(scrapPerKg, remnantShare, keepLengthMm, keepWidthMm, handlingPerSheet, perMmCut, webMm);
    }

    /** Whether a rest of a sheet is kept: large enough whichever side is the longer; of a bar, long enough. */
    public boolean keeps(SheetOffer sheet, double restLengthMm, double restWidthMm) {
        double longest = sheet.bar() ? restLengthMm : Math.max(restLengthMm, restWidthMm);
        double shortest = sheet.bar() ? Double.POSITIVE_INFINITY : Math.min(restLengthMm, restWidthMm);
        return longest >= Math.max(keepLengthMm, keepWidthMm) - 1e-9 && shortest >= Math.min(keepLengthMm, keepWidthMm) - 1e-9;
    }

    /** What a kept remnant of a sheet is worth. */
    public double remnantValue(SheetOffer sheet, double areaMm2) {
        return remnantShare * sheet.price() * areaMm2 / sheet.areaMm2();
    }
}
