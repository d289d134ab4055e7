// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import java.util.List;

/**
 * Input of the layout of parts of one material and thickness on sheets.
 *
 * @param parts        what is needed
 * @param offers       sheets in stock
 * @param margins      what stays free along the edges of a sheet
 * @param limits       sheets that the machine takes
 * @param massPerMm2Kg mass of the sheet per mm2
 * @param costs        what decides beside the price of the sheets
 * @param search       how far to search
 */
public record NestingJob(List<NestPart> parts, List<SheetOffer> offers, Margins margins, SheetLimits limits,
        double massPerMm2Kg, NestingCosts costs, SearchLimits search) {

    public NestingJob {
        parts = List.copyOf(parts);
        offers = List.copyOf(offers);
    }

    /** Bounding boxes only, the price of the sheets decides. */
    public NestingJob(List<NestPart> parts, List<SheetOffer> offers, double edgeMm, double clampStripMm, double maxLengthMm,
            double maxWidthMm, double maxMassKg, double massPerMm2Kg, long workLimit, long seed) {
        this(parts, offers, edgeMm, clampStripMm, maxLengthMm, maxWidthMm, maxMassKg, massPerMm2Kg, workLimit, seed, false);
    }

    /** The price of the sheets decides. */
    public NestingJob(List<NestPart> parts, List<SheetOffer> offers, double edgeMm, double clampStripMm, double maxLengthMm,
            double maxWidthMm, double maxMassKg, double massPerMm2Kg, long workLimit, long seed, boolean trueShapes) {
        this(parts, offers, new Margins(edgeMm, clampStripMm), new SheetLimits(maxLengthMm, maxWidthMm, maxMassKg),
                massPerMm2Kg, NestingCosts.SHEETS_ONLY, new SearchLimits(workLimit, seed, trueShapes));
    }

    /** The same job for other parts. */
    public NestingJob withParts(List<NestPart> others) {
        return new NestingJob(others, offers, margins, limits, massPerMm2Kg, costs, search);
    }

    /** The same job with another stock. */
    public NestingJob withOffers(List<SheetOffer> others) {
        return new NestingJob(parts, others, margins, limits, massPerMm2Kg, costs, search);
    }

    public NestingJob with(Margins others) {
        return new NestingJob(parts, offers, others, limits, massPerMm2Kg, costs, search);
    }

    public NestingJob with(NestingCosts others) {
        return new NestingJob(parts, offers, margins, limits, massPerMm2Kg, others, search);
    }

    public NestingJob with(SearchLimits others) {
        return new NestingJob(parts, offers, margins, limits, massPerMm2Kg, costs, others);
    }
}
