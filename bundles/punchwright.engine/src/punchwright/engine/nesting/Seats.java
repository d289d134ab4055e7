// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Flattening;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Pose;
import punchwright.engine.geometry.Shape;

/**
 * Parts that may lie in the clamp strip: as long as the sheet, with its lower corners and both ends for their own, so that no
 * cut comes into the strip; and with the upper edge below the margin, or the sheet's own as well. One such part a sheet.
 */
final class Seats {

    /** Lengths nearer than this are the same, mm. */
    private static final double SAME_MM = 5e-4;
    private static final double CHORD_MM = 0.01;

    private final NestingJob job;
    private final List<SheetOffer> offers;
    private final Map<BoxPart, int[]> turns = new IdentityHashMap<>();

    Seats(NestingJob job, List<SheetOffer> offers) {
        this.job = job;
        this.offers = offers;
    }

    /** The turn at which the part may lie in the clamp strip of an offer, or -1. */
    int turn(BoxPart part, int offer) {
        return job.margins().clampZone() == ClampZone.NO_PART ? -1 : turns.computeIfAbsent(part, this::turns)[offer];
    }

    private int[] turns(BoxPart part) {
        int[] found = new int[offers.size()];
        for (int i = 0; i < found.length; i++) {
            found[i] = -1;
            for (int t = part.turns().size() - 1; t >= 0; t--) {
                found[i] = fits(part, part.turns().get(t), offers.get(i)) ? t : found[i];
            }
        }
        return found;
    }

    private boolean fits(BoxPart part, Turn turn, SheetOffer sheet) {
        double width = Ticks.mm(turn.width());
        boolean all = Math.abs(width - sheet.widthMm()) < SAME_MM;
        if (sheet.bar() || Math.abs(Ticks.mm(turn.length()) - sheet.lengthMm()) > SAME_MM
                || !all && width > sheet.widthMm() - job.margins().edgeMm() + SAME_MM) {
            return false;
        }
        Shape at = part.part().shape().moved(Pose.at(-turn.minX(), -turn.minY(), turn.angleDeg()));
        double least = job.margins().clampStripMm() + job.margins().hitReachMm();
        return onEdges(at.outer(), sheet, all, least)
                && at.holes().stream().allMatch(h -> h.bounds().minY() >= least);
    }

    /** Whether lower edge and ends (and the upper edge, where it is the sheet's) are the sheet's own, all other cuts above. */
    private static boolean onEdges(Contour outer, SheetOffer sheet, boolean all, double least) {
        List<Point> points = new ArrayList<>(Flattening.points(outer, CHORD_MM));
        double top = outer.bounds().maxY();
        double own = 0;
        for (int i = 0; i < points.size(); i++) {
            Point a = points.get(i);
            Point b = points.get((i + 1) % points.size());
            boolean end = near(a.x(), b.x(), 0) || near(a.x(), b.x(), sheet.lengthMm());
            boolean edge = end || near(a.y(), b.y(), 0) || all && near(a.y(), b.y(), sheet.widthMm());
            own += edge ? Math.hypot(b.x() - a.x(), b.y() - a.y()) : 0;
            if (!edge && Math.min(a.y(), b.y()) < least) {
                return false;
            }
        }
        return own >= (all ? 2 : 1) * sheet.lengthMm() + 2 * top - 4 * SAME_MM;
    }

    private static boolean near(double a, double b, double at) {
        return Math.abs(a - at) < SAME_MM && Math.abs(b - at) < SAME_MM;
    }
}
