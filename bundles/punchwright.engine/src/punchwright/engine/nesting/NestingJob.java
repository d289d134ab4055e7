// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import java.util.List;

/**
 * Input of the layout of parts of one material and thickness on sheets.
 *
 * @param parts         what is needed
 * @param offers        sheets in stock
 * @param edgeMm        least distance to the sheet's edge
 * @param clampStripMm  strip along y = 0 without parts
 * @param maxLengthMm   longest sheet the machine takes
 * @param maxWidthMm    widest sheet the machine takes
 * @param maxMassKg     heaviest sheet the machine takes
 * @param massPerMm2Kg  mass of the sheet per mm2
 * @param workLimit     largest number of trial placements
 * @param seed          for choices between equals
 */
public record NestingJob(List<NestPart> parts, List<SheetOffer> offers, double edgeMm, double clampStripMm,
        double maxLengthMm, double maxWidthMm, double maxMassKg, double massPerMm2Kg, long workLimit, long seed,
        boolean trueShapes) {

    /** Bounding boxes only. */
    public NestingJob(List<NestPart> parts, List<SheetOffer> offers, double edgeMm, double clampStripMm, double maxLengthMm,
            double maxWidthMm, double maxMassKg, double massPerMm2Kg, long workLimit, long seed) {
        this(parts, offers, edgeMm, clampStripMm, maxLengthMm, maxWidthMm, maxMassKg, massPerMm2Kg, workLimit, seed, false);
    }
}
