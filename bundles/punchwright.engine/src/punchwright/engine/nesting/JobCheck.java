// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

/** Refuses input that has no meaning, before any work. */
final class JobCheck {

    private JobCheck() {
    }

    static void check(NestingJob job) {
        notNegative("job", "edge margin in mm", job.margins().edgeMm());
        notNegative("job", "clamp strip in mm", job.margins().clampStripMm());
        notNegative("job", "reach of a hit in mm", job.margins().hitReachMm());
        notNegative("job", "mass of the sheet in kg/mm2", job.massPerMm2Kg());
        costs(job.costs());
        job.parts().forEach(JobCheck::part);
        for (SheetOffer offer : job.offers()) {
            String name = "sheet " + offer.id();
            notNegative(name, "length in mm", offer.lengthMm());
            notNegative(name, "width in mm", offer.widthMm());
            notNegative(name, "price", offer.price());
            notNegative(name, "quantity", offer.quantity());
        }
    }

    private static void costs(NestingCosts costs) {
        notNegative("job", "scrap value per kg", costs.scrapPerKg());
        notNegative("job", "share of the price that a remnant keeps", costs.remnantShare());
        notNegative("job", "length of the smallest remnant in mm", costs.keepLengthMm());
        notNegative("job", "width of the smallest remnant in mm", costs.keepWidthMm());
        notNegative("job", "handling of a sheet", costs.handlingPerSheet());
        notNegative("job", "machine time for a mm of cut", costs.perMmCut());
        if (costs.remnantShare() > 1) {
            throw new IllegalArgumentException("job: share of the price that a remnant keeps is " + costs.remnantShare()
                    + "; enter a number from 0 to 1");
        }
    }

    private static void part(NestPart part) {
        String name = "part " + part.id();
        if (part.quantity() < 1) {
            throw new IllegalArgumentException(name + ": quantity is " + part.quantity() + "; enter at least 1");
        }
        if (part.anglesDeg().isEmpty() || part.anglesDeg().stream().anyMatch(a -> !Double.isFinite(a))) {
            throw new IllegalArgumentException(name + ": allowed angles are " + part.anglesDeg()
                    + "; give at least one in degrees");
        }
        notNegative(name, "web in mm", part.webMm());
            part.openings().forEach(o -> opening(name, part, o));
        notNegative(name, "value of a piece", part.pieceValue());
    }

    private static void opening(String name, NestPart part, UsableOpening o) {
        if (o.hole() < 0 || o.hole() >= part.shape().holes().size()) {
            throw new IllegalArgumentException(name + ": opening " + o.hole() + " is not one of its "
                    + part.shape().holes().size() + " openings; count from 0");
        }
        notNegative(name, "distance from the edge of opening " + o.hole() + " in mm", o.clearMm());
    }

    private static void notNegative(String name, String what, double value) {
        if (!(value >= 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(name + ": " + what + " is " + value + "; enter a number from 0 up");
        }
    }
}
