// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import java.util.ArrayList;
import java.util.List;

import punchwright.engine.finding.Finding;

/** The offers that the machine takes, with their usable regions; the others are turned into findings. */
final class Stock {

    private final List<SheetOffer> offers = new ArrayList<>();
    private final List<Region> regions = new ArrayList<>();
    private final SheetCosts costs;
    private final Seats seats;

    Stock(NestingJob job, List<Finding> findings) {
        this.costs = new SheetCosts(job);
        this.seats = new Seats(job, offers);
        for (SheetOffer offer : job.offers()) {
            Finding refusal = refusal(offer, job);
            if (refusal != null) {
                findings.add(refusal);
            } else if (offer.quantity() > 0) {
                offers.add(offer);
                regions.add(Region.of(offer, job));
            }
        }
    }

    private static Finding refusal(SheetOffer offer, NestingJob job) {
        double mass = offer.lengthMm() * offer.widthMm() * job.massPerMm2Kg();
        if (offer.lengthMm() > job.limits().maxLengthMm()) {
            return Finding.of(NestingReason.SHEET_LONG, "sheet " + offer.id(), offer.id(), offer.lengthMm(),
                    job.limits().maxLengthMm());
        }
        if (offer.widthMm() > job.limits().maxWidthMm()) {
            return Finding.of(NestingReason.SHEET_WIDE, "sheet " + offer.id(), offer.id(), offer.widthMm(),
                    job.limits().maxWidthMm());
        }
        if (mass > job.limits().maxMassKg()) {
            return Finding.of(NestingReason.SHEET_HEAVY, "sheet " + offer.id(), offer.id(), mass, job.limits().maxMassKg());
        }
        Region region = Region.of(offer, job);
        if ((region.length() == 0 || region.width() == 0) && job.margins().clampZone() == ClampZone.NO_PART) {
            return Finding.of(NestingReason.SHEET_ALL_MARGIN, "sheet " + offer.id(), offer.id(), offer.lengthMm(),
                    offer.widthMm(), job.margins().edgeMm(), job.margins().clampStripMm());
        }
        return null;
    }

    int size() {
        return offers.size();
    }

    boolean isEmpty() {
        return offers.isEmpty();
    }

    SheetOffer offer(int i) {
        return offers.get(i);
    }

    Region region(int i) {
        return regions.get(i);
    }

    /** What a sheet costs with parts on it. */
    SheetCosts costs() {
        return costs;
    }

    /** Quantities on hand. */
    int[] onHand() {
        return offers.stream().mapToInt(SheetOffer::quantity).toArray();
    }

    double areaMm2(int i) {
        return offers.get(i).areaMm2();
    }

    boolean takes(BoxPart part) {
        return regions.stream().anyMatch(part::fits) || sits(part);
    }

    /** Whether a part may lie in the clamp strip of some sheet. */
    boolean sits(BoxPart part) {
        boolean sits = false;
        for (int i = 0; i < offers.size(); i++) {
            sits |= seats.turn(part, i) >= 0;
        }
        return sits;
    }

    /** The box of a part in the clamp strip of an offer, in its region's ticks; null where it may not lie there. */
    BoxPlacement seat(int offer, BoxPart part, int number) {
        int turn = seats.turn(part, offer);
        Region r = regions.get(offer);
        return turn < 0 ? null : new BoxPlacement(number, turn, -Ticks.of(r.xMm()), -Ticks.of(r.yMm()));
    }
}
