// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import java.util.ArrayList;
import java.util.List;

import punchwright.engine.geometry.Bounds;
import punchwright.engine.nesting.boxes.FreeSpace;

/**
 * The rectangles at the far end and along the side away from the clamps that a layout leaves and that are large enough to keep,
 * a web (or the reach of a hit, if that is more) away from the boxes of the parts. Two ways are compared: the largest free
 * rectangle, then the largest of what is left, and so on; and a strip over the full width at the end with a strip along the
 * side beside it, or the other way round. The one of more value counts.
 */
final class FreeRests {

    private static final int MOST = 3;

    private final NestingJob job;
    private final double gapMm;

    FreeRests(NestingJob job) {
        this.job = job;
        this.gapMm = Math.max(job.margins().hitReachMm(), job.parts().stream().mapToDouble(NestPart::webMm).max().orElse(0));
    }

    /** Least distance of a rest from a part. */
    double gapMm() {
        return gapMm;
    }

    /** Rests of a sheet with parts in the given boxes (sheet coordinates), the largest first. */
    List<Bounds> of(SheetOffer sheet, List<Bounds> boxes) {
        List<Bounds> strips = strips(sheet, boxes.stream().mapToDouble(Bounds::maxX).max().orElse(0),
                boxes.stream().mapToDouble(Bounds::maxY).max().orElse(0));
        List<Bounds> greedy = greedy(sheet, boxes);
        return area(greedy) > area(strips) + 1e-6 ? greedy : strips;
    }

    /** The better of the two ways to cut strips where parts reach to x and y. */
    List<Bounds> strips(SheetOffer sheet, double toXMm, double toYMm) {
        double x = Math.min(sheet.lengthMm(), toXMm + gapMm);
        double y = sheet.bar() ? sheet.widthMm() : Math.min(sheet.widthMm(), toYMm + gapMm);
        List<Bounds> endFirst = kept(sheet, new Bounds(x, 0, sheet.lengthMm(), sheet.widthMm()),
                new Bounds(0, y, x, sheet.widthMm()));
        List<Bounds> sideFirst = kept(sheet, new Bounds(0, y, sheet.lengthMm(), sheet.widthMm()),
                new Bounds(x, 0, sheet.lengthMm(), y));
        return area(sideFirst) > area(endFirst) + 1e-6 ? sideFirst : endFirst;
    }

    private List<Bounds> kept(SheetOffer sheet, Bounds... rests) {
        List<Bounds> kept = new ArrayList<>();
        for (Bounds r : rests) {
            if (r.width() > 0 && r.height() > 0 && keeps(sheet, r.width(), r.height())) {
                kept.add(r);
            }
        }
        return kept;
    }

    /** Large enough, and worth no less than as scrap. */
    private boolean keeps(SheetOffer sheet, double lengthMm, double widthMm) {
        return job.costs().keeps(sheet, lengthMm, widthMm)
                && job.costs().remnantValue(sheet, 1) >= job.costs().scrapPerKg() * job.massPerMm2Kg() - 1e-15;
    }

    private List<Bounds> greedy(SheetOffer sheet, List<Bounds> boxes) {
        int length = Ticks.of(sheet.lengthMm());
        int width = Ticks.of(sheet.widthMm());
        FreeSpace free = new FreeSpace().reset(length, width);
        for (Bounds b : boxes) {
            int x = Ticks.of(b.minX() - gapMm);
            int y = sheet.bar() ? 0 : Ticks.of(b.minY() - gapMm);
            free.use(x, y, Ticks.of(b.maxX() + gapMm) - x, (sheet.bar() ? width : Ticks.of(b.maxY() + gapMm)) - y);
        }
        List<Bounds> out = new ArrayList<>();
        int best = largest(sheet, free, length, width);
        while (best >= 0 && out.size() < MOST) {
            out.add(new Bounds(Ticks.mm(free.x(best)), Ticks.mm(free.y(best)), Ticks.mm(free.x(best) + free.length(best)),
                    Ticks.mm(free.y(best) + free.width(best))));
            free.use(free.x(best), free.y(best), free.length(best), free.width(best));
            best = largest(sheet, free, length, width);
        }
        return out;
    }

    /** The largest free rectangle at the far end or along the far side that is kept, or -1. */
    private int largest(SheetOffer sheet, FreeSpace free, int length, int width) {
        int best = -1;
        long area = 0;
        for (int i = 0; i < free.size(); i++) {
            long a = (long) free.length(i) * free.width(i);
            boolean atEdge = free.x(i) + free.length(i) == length || free.y(i) + free.width(i) == width;
            if (a > area && atEdge && keeps(sheet, Ticks.mm(free.length(i)), Ticks.mm(free.width(i)))) {
                best = i;
                area = a;
            }
        }
        return best;
    }

    static double area(List<Bounds> rests) {
        return rests.stream().mapToDouble(r -> r.width() * r.height()).sum();
    }
}
