// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Shape;

/** Nesting jobs for tests. */
final class Jobs {

    static final double STEEL_1_5_KG_PER_MM2 = 1.5 * 7.85e-6;

    private Jobs() {
    }

    static Shape rectangle(double lengthMm, double widthMm) {
        return new Shape(Contour.rectangle(0, 0, lengthMm, widthMm), List.of());
    }

    static NestPart part(String id, double lengthMm, double widthMm, int quantity, double webMm, Double... anglesDeg) {
        return new NestPart(id, rectangle(lengthMm, widthMm), quantity, List.of(anglesDeg), webMm);
    }

    static SheetOffer sheet(String id, double lengthMm, double widthMm, double price, int quantity) {
        return new SheetOffer(id, lengthMm, widthMm, price, quantity, false);
    }

    static NestingJob job(List<NestPart> parts, List<SheetOffer> offers, double edgeMm, double clampStripMm) {
        return new NestingJob(parts, offers, edgeMm, clampStripMm, 10_000, 3_000, 1_000, STEEL_1_5_KG_PER_MM2, 300_000, 1);
    }

    /** A small order of L-shapes, triangles, discs and rectangles on one to three kinds of sheets. */
    static NestingJob random(long seed) {
        SplittableRandom r = new SplittableRandom(seed);
        List<NestPart> parts = new ArrayList<>();
        int kinds = 1 + r.nextInt(6);
        double web = r.nextInt(3) == 0 ? 0 : r.nextInt(1, 12);
        for (int i = 0; i < kinds; i++) {
            List<Double> angles = r.nextBoolean() ? List.of(0.0, 90.0, 180.0, 270.0) : List.of(0.0, 180.0);
            double own = r.nextInt(3) == 0 ? r.nextDouble(0, 12) : web;
            parts.add(new NestPart("P" + i, shape(r), 1 + r.nextInt(40), angles, own));
        }
        List<SheetOffer> offers = new ArrayList<>();
        for (int i = 0, n = 1 + r.nextInt(3); i < n; i++) {
            double length = r.nextInt(600, 3000);
            double width = r.nextInt(400, 1500);
            offers.add(new SheetOffer("S" + i, length, width, length * width * 2e-5 * r.nextDouble(0.8, 1.2),
                    1 + r.nextInt(12), r.nextInt(4) == 0));
        }
        return new NestingJob(parts, offers, r.nextInt(0, 16), r.nextInt(0, 100), 10_000, 3_000, 1_000,
                STEEL_1_5_KG_PER_MM2, 20_000, seed);
    }

    /**
     * The same with everything else: parts that may be made or fill up, value of remnants and scrap, handling, a part as long as
     * a sheet where hits only are kept out of the clamp strip, bars, true shapes.
     */
    static NestingJob various(long seed) {
        NestingJob plain = random(seed);
        SplittableRandom r = new SplittableRandom(seed * 7919);
        boolean bars = r.nextInt(4) == 0;
        List<NestPart> parts = new ArrayList<>();
        for (NestPart p : plain.parts()) {
            Want want = Want.values()[r.nextInt(2) * r.nextInt(3)];
            parts.add(new NestPart(p.id(), p.shape(), p.quantity(), p.anglesDeg(), p.webMm(), want,
                    r.nextInt(3) * r.nextDouble(2)));
        }
        List<SheetOffer> offers = new ArrayList<>();
        for (SheetOffer o : plain.offers()) {
            boolean bar = bars && r.nextInt(3) > 0;
            double width = bar ? r.nextInt(60, 400) : o.widthMm();
            offers.add(new SheetOffer(o.id(), o.lengthMm(), width, o.price() * width / o.widthMm(), o.quantity(),
                    o.remnant(), bar));
        }
        Margins m = plain.margins();
        if (r.nextInt(4) == 0) {
            m = new Margins(m.edgeMm(), m.clampStripMm(), ClampZone.NO_HIT, r.nextInt(0, 6));
            SheetOffer o = offers.get(r.nextInt(offers.size()));
            parts.add(part("long", o.lengthMm(), r.nextInt(3) == 0 ? o.widthMm() : r.nextInt(20, (int) o.widthMm()),
                    1 + r.nextInt(3), plain.parts().get(0).webMm(), 0.0));
        }
        NestingCosts costs = new NestingCosts(r.nextInt(2) * 0.4, r.nextInt(3) * 0.4, r.nextInt(300, 900), r.nextInt(100, 400),
                r.nextInt(5), r.nextInt(2) * 1e-4);
        SearchLimits search = new SearchLimits(r.nextInt(8) == 0 ? 40_000 : 15_000, seed, r.nextInt(8) == 0);
        return new NestingJob(parts, offers, m, plain.limits(), plain.massPerMm2Kg(), costs, search);
    }

    private static Shape shape(SplittableRandom r) {
        double a = r.nextDouble(15, 400);
        double b = r.nextDouble(15, 300);
        double x = r.nextDouble(-500, 500);
        double y = r.nextDouble(-500, 500);
        return switch (r.nextInt(4)) {
            case 0 -> new Shape(Contour.polygon(List.of(new Point(x, y), new Point(x + a, y), new Point(x + a, y + b / 3),
                    new Point(x + a / 4, y + b / 3), new Point(x + a / 4, y + b), new Point(x, y + b))), List.of());
            case 1 -> new Shape(Contour.polygon(List.of(new Point(x, y), new Point(x + a, y + b / 5),
                    new Point(x + a / 3, y + b))), List.of());
            case 2 -> new Shape(Contour.circle(new Point(x, y), b), List.of(Contour.circle(new Point(x, y), b / 2)));
            default -> new Shape(Contour.rectangle(x, y, a, b), List.of());
        };
    }
}
