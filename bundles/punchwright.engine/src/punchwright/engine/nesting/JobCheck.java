// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

/** Refuses input that has no meaning, before any work. */
final class JobCheck {

    private JobCheck() {
    }

    static void check(NestingJob job) {
        notNegative("job", "edge margin in mm", job.edgeMm());
        notNegative("job", "clamp strip in mm", job.clampStripMm());
        notNegative("job", "mass of the sheet in kg/mm2", job.massPerMm2Kg());
        for (NestPart part : job.parts()) {
            String name = "part " + part.id();
            if (part.quantity() < 1) {
                throw new IllegalArgumentException(name + ": quantity is " + part.quantity() + "; enter at least 1");
            }
            if (part.anglesDeg().isEmpty() || part.anglesDeg().stream().anyMatch(a -> !Double.isFinite(a))) {
                throw new IllegalArgumentException(name + ": allowed angles are " + part.anglesDeg()
                        + "; give at least one in degrees");
            }
            notNegative(name, "web in mm", part.webMm());
        }
        for (SheetOffer offer : job.offers()) {
            String name = "sheet " + offer.id();
            notNegative(name, "length in mm", offer.lengthMm());
            notNegative(name, "width in mm", offer.widthMm());
            notNegative(name, "price", offer.price());
            notNegative(name, "quantity", offer.quantity());
        }
    }

    private static void notNegative(String name, String what, double value) {
        if (!(value >= 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(name + ": " + what + " is " + value + "; enter a number from 0 up");
        }
    }
}
