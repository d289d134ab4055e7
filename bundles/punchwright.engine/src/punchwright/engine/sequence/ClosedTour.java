// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.sequence;

import java.util.Arrays;
import java.util.function.BooleanSupplier;

/** A short closed tour: greedy edges first ({@link StartTour}), then local search and kicks ({@link Tour}). */
public final class ClosedTour {

    private static final int NEAREST = 8;
    private static final int IN_EACH_QUARTER = 1;

    private ClosedTour() {
    }

    /** For each point of the plane the points worth being next to it, nearest first by the floor of the costs. */
    public static int[][] neighbours(TourBound.Costs costs, double[] x, double[] y) {
        return new PointIndex(x, y).around(NEAREST, IN_EACH_QUARTER, costs::least);
    }

    /** No two nodes are tied to each other. */
    public static int[] noPartners(int nodes) {
        int[] partner = new int[nodes];
        Arrays.fill(partner, -1);
        return partner;
    }

    /**
     * @param metric      symmetric cost
     * @param neighbours  for each node the nodes worth being next to it, nearest first
     * @param partner     for each node the node it must stay next to, or -1
     * @param workLimit   largest number of costs looked at after the first tour
     * @param seed        for the kicks
     * @param stop        a reason to stop early, asked after each kick
     * @return the nodes in the order of the tour
     */
    public static int[] of(Tour.Metric metric, int[][] neighbours, int[] partner, long workLimit, long seed,
            BooleanSupplier stop) {
        return Tour.improve(metric, neighbours, StartTour.greedy(metric, neighbours, partner), partner, workLimit, seed, stop);
    }
}
