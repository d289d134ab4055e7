// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.holding;

import java.util.ArrayList;
import java.util.List;

import punchwright.engine.press.Clamps;

/**
 * Every clamp setting and carriage position on a raster of 10 mm. All limits are differences of positions, so that their
 * matrix is totally unimodular: with all data multiples of 10 mm the best over the raster is the best of all (Hoffman and
 * Kruskal, 1956). One or two clamps, round tools of 20 mm.
 */
final class BruteForce {

    record Best(int unmade, int holdings) {

        boolean betterThan(Best o) {
            return unmade < o.unmade || unmade == o.unmade && holdings < o.holdings;
        }
    }

    private static final int STEP = 10;
    private final HoldingJob job;
    private final Clamps c;
    private final int count;

    BruteForce(HoldingJob job, int clamps) {
        this.job = job;
        this.c = job.machine().clamps();
        this.count = clamps;
    }

    Best best(boolean turn) {
        Best best = new Best(Integer.MAX_VALUE, 0);
        for (int u = (int) c.minCenterMm(); u <= c.maxCenterMm(); u += STEP) {
            int from = count == 1 ? u : u + (int) Math.max(c.minSpacingMm(), c.widthMm());
            int to = count == 1 ? u : (int) c.maxCenterMm();
            for (int v = from; v <= to; v += STEP) {
                Best found = solve(u, v, turn);
                best = found.betterThan(best) ? found : best;
            }
        }
        return best;
    }

    private Best solve(int u, int v, boolean turn) {
        List<Long> masks = new ArrayList<>();
        long union = 0;
        for (int side = 0; side < (turn ? 2 : 1); side++) {
            for (int zero = -3000; zero <= 3000; zero += STEP) {
                boolean held = zero + u - c.widthMm() / 2 >= 0 && zero + v + c.widthMm() / 2 <= job.sheetLengthMm();
                long mask = held ? mask(u, v, zero, side == 1) : 0;
                if (mask != 0 && !masks.contains(mask)) {
                    masks.add(mask);
                    union |= mask;
                }
            }
        }
        int holdings = 0;
        while (!covers(masks, 0, union, holdings)) {
            holdings++;
        }
        return new Best(job.hits().size() - Long.bitCount(union), holdings);
    }

    private static boolean covers(List<Long> masks, int from, long open, int left) {
        if (open == 0) {
            return true;
        }
        for (int i = from; left > 0 && i < masks.size(); i++) {
            if (covers(masks, i + 1, open & ~masks.get(i), left - 1)) {
                return true;
            }
        }
        return false;
    }

    private long mask(int u, int v, int zero, boolean turned) {
        long mask = 0;
        for (int i = 0; i < job.hits().size(); i++) {
            double x = turned ? job.sheetLengthMm() - job.hits().get(i).at().x() : job.hits().get(i).at().x();
            double y = turned ? job.sheetWidthMm() - job.hits().get(i).at().y() : job.hits().get(i).at().y();
            boolean reached = x >= zero && x <= zero + job.machine().travelXMm() && y <= job.machine().throatDepthMm();
            boolean clear = y - 10 - c.deadZoneMm() >= c.depthMm() || apart(x, zero + u) && apart(x, zero + v);
            mask |= reached && clear ? 1L << i : 0;
        }
        return mask;
    }

    private boolean apart(double x, double center) {
        return Math.abs(x - center) >= 10 + c.deadZoneMm() + c.widthMm() / 2;
    }
}
