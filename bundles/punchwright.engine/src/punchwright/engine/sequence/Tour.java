// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.sequence;

import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;

/**
 * A short closed tour through nodes under any symmetric cost: local search (2-opt and Or-opt with neighbour lists and a
 * queue of nodes worth a look), then many small kicks (double bridge of neighbouring short segments), each kept when the
 * tour is no longer after repair, else taken back.
 *
 * <p>Pairs of nodes that must stay neighbours are given as {@code partner}; the tour never breaks them.
 * Sources: Or, thesis, Northwestern University 1976; Bentley, ORSA J. Computing 4 (1992) 387-411; Martin, Otto, Felten,
 * Complex Systems 5 (1991) 299-326.
 */
public final class Tour {

    /** Cost of going from one node to the other, the same both ways, not negative. */
    public interface Metric {
        double cost(int from, int to);
    }

    private static final int LONGEST_SEGMENT = 50;

    private final TourArray array;
    private final LocalSearch search;
    private final SplittableRandom random;
    private final int[] partner;

    private Tour(Metric metric, int[][] neighbours, int[] start, int[] partner, long seed) {
        this.partner = partner;
        this.array = new TourArray(start);
        this.search = new LocalSearch(metric, neighbours, array, partner);
        this.random = new SplittableRandom(seed);
    }

    /**
     * Improves a tour.
     *
     * @param metric      symmetric cost
     * @param neighbours  for each node the nodes worth being next to it, nearest first
     * @param start       the nodes in any order in which partners are neighbours
     * @param partner     for each node the node it must stay next to, or -1
     * @param workLimit   largest number of costs looked at
     * @param seed        for the kicks
     * @return the nodes in the order of the tour
     */
    public static int[] improve(Metric metric, int[][] neighbours, int[] start, int[] partner, long workLimit, long seed) {
        return improve(metric, neighbours, start, partner, workLimit, seed, () -> false);
    }

    /** The same with a reason to stop early, asked after each kick; the result then depends on when it says so. */
    public static int[] improve(Metric metric, int[][] neighbours, int[] start, int[] partner, long workLimit, long seed,
            BooleanSupplier stop) {
        Tour tour = new Tour(metric, neighbours, start, partner, seed);
        tour.run(workLimit, stop);
        return tour.array.order();
    }

    private void run(long workLimit, BooleanSupplier stop) {
        search.queueAll();
        search.run();
        while (array.size() >= 8 && search.work() < workLimit && !stop.getAsBoolean()) {
            kick();
        }
    }

    private void kick() {
        array.clearLog();
        int n = array.size();
        int longest = Math.min(LONGEST_SEGMENT, (n - 2) / 3);
        int a = free(random.nextInt(n));
        int s2 = free(array.position(a) + 1 + random.nextInt(longest));
        int c = free(array.position(s2) + 1 + random.nextInt(longest));
        if (s2 == a || c == s2 || c == a || !array.between(a, s2, c)) {
            search.count(1);
            return;
        }
        double change = search.swapSegments(a, s2, c) + search.run();
        if (change > 1e-9) {
            array.undo();
        }
    }

    /** The node at a position, or the one after it where an edge that must stay begins there. */
    private int free(int position) {
        int node = array.at(position);
        return partner[node] >= 0 && partner[node] == array.next(node) ? array.next(node) : node;
    }
}
