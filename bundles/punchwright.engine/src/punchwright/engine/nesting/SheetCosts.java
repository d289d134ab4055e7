// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

/** What one sheet costs as the choice between layouts sees it: price and handling less the value of remnants and scrap. */
final class SheetCosts {

    private final NestingJob job;
    private final FreeRests rests;

    SheetCosts(NestingJob job) {
        this.job = job;
        this.rests = new FreeRests(job);
    }

    NestingJob job() {
        return job;
    }

    /** Whether the cost of a sheet depends on the parts on it. */
    boolean dependOnRest() {
        return job.costs().remnantShare() > 0 || scrapPerMm2() > 0;
    }

    /** What scrap brings. */
    double scrapPerMm2() {
        return job.costs().scrapPerKg() * job.massPerMm2Kg();
    }

    /** Parts of the given true area that reach to x and y on the sheet. */
    double of(SheetOffer sheet, double partMm2, double toXMm, double toYMm) {
        double cost = sheet.price() + job.costs().handlingPerSheet();
        if (dependOnRest()) {
            double kept = FreeRests.area(rests.strips(sheet, toXMm, toYMm));
            cost -= job.costs().remnantValue(sheet, kept) + Math.max(0, sheet.areaMm2() - partMm2 - kept) * scrapPerMm2();
        }
        return cost;
    }

    /** No parts will ever make a sheet cheaper than this for each mm2 of sheet less parts. */
    double mostCreditPerMm2(SheetOffer sheet) {
        return sheet.areaMm2() == 0 ? 0 : Math.max(job.costs().remnantShare() * sheet.price() / sheet.areaMm2(), scrapPerMm2());
    }
}
