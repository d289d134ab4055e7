// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling.setup;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import punchwright.engine.tooling.setup.Seating.Carrier;

/**
 * The cheapest seats for a given set of set-ups.
 *
 * <p>For every way to use carriers the set-ups are put in one after the other along shortest paths of moves between kinds of
 * seats, which is exact (successive shortest paths for a transport problem; Ahuja, Magnanti, Orlin, Network Flows, from memory).
 *
 * @param kindOf   kind of seat of each set-up in the order asked; empty when there is no way
 * @param carriers carriers used: for each the index of the carrier and of the kind it stands in
 * @param cost     of seats and carriers; infinite when there is no way
 */
public record SeatPlan(int[] kindOf, List<int[]> carriers, double cost) {

    /** Ways to use carriers that are tried at most; fewer carriers first. */
    private static final int MOST_WAYS = 400;

    public boolean possible() {
        return Double.isFinite(cost);
    }

    /** @param setups numbers of the set-ups that need a seat */
    public static SeatPlan of(Seating seating, int[] setups) {
        double least = 0;
        for (int s : setups) {
            least += seating.least(s);
        }
        SeatPlan best = new SeatPlan(new int[0], List.of(), Double.POSITIVE_INFINITY);
        for (List<int[]> used : ways(seating)) {
            double cost = used.stream().mapToDouble(u -> seating.carriers().get(u[0]).cost()).sum();
            if (cost + least < best.cost - 1e-9) {
                SeatPlan plan = with(seating, setups, used, cost);
                best = plan.cost < best.cost - 1e-9 ? plan : best;
            }
        }
        return best;
    }

    /** Every way to use carriers, breadth first: none, one, two. */
    private static List<List<int[]>> ways(Seating seating) {
        List<List<int[]>> ways = new ArrayList<>();
        ways.add(List.of());
        for (int i = 0; i < ways.size() && ways.size() < MOST_WAYS; i++) {
            List<int[]> way = ways.get(i);
            for (int c = 0; c < seating.carriers().size(); c++) {
                for (int kind : seating.carriers().get(c).in()) {
                    int carrier = c;
                    boolean rises = way.isEmpty() || c > way.getLast()[0] || c == way.getLast()[0] && kind >= way.getLast()[1];
                    if (rises && way.stream().filter(u -> u[0] == carrier).count() < seating.carriers().get(c).most()
                            && way.stream().filter(u -> u[1] == kind).count() < seating.room()[kind]) {
                        List<int[]> more = new ArrayList<>(way);
                        more.add(new int[] { c, kind });
                        ways.add(more);
                    }
                }
            }
        }
        return ways;
    }

    private static SeatPlan with(Seating seating, int[] setups, List<int[]> used, double carrierCost) {
        int[] free = seating.room().clone();
        for (int[] u : used) {
            Carrier c = seating.carriers().get(u[0]);
            free[u[1]]--;
            free[c.kind()] += c.seats();
        }
        int[] kindOf = new int[setups.length];
        Arrays.fill(kindOf, -1);
        for (int i = 0; i < setups.length; i++) {
            if (!insert(seating, setups, kindOf, free, i)) {
                return new SeatPlan(new int[0], List.of(), Double.POSITIVE_INFINITY);
            }
        }
        double cost = carrierCost;
        for (int i = 0; i < setups.length; i++) {
            cost += seating.cost()[setups[i]][kindOf[i]];
        }
        return new SeatPlan(kindOf, List.copyOf(used), cost);
    }

    /** Seats one more along the cheapest chain of moves; false when there is none. */
    private static boolean insert(Seating seating, int[] setups, int[] kindOf, int[] free, int next) {
        int kinds = free.length;
        int[][] mover = new int[kinds][kinds];
        double[][] move = moves(seating, setups, kindOf, mover);
        double[] far = seating.cost()[setups[next]].clone();
        int[] from = new int[kinds];
        Arrays.fill(from, -1);
        for (int round = 0; round < kinds; round++) {
            for (int k = 0; k < kinds; k++) {
                for (int l = 0; l < kinds; l++) {
                    if (far[k] + move[k][l] < far[l] - 1e-9) {
                        far[l] = far[k] + move[k][l];
                        from[l] = k;
                    }
                }
            }
        }
        int end = -1;
        for (int k = 0; k < kinds; k++) {
            end = free[k] > 0 && Double.isFinite(far[k]) && (end < 0 || far[k] < far[end] - 1e-9) ? k : end;
        }
        if (end < 0) {
            return false;
        }
        free[end]--;
        for (int k = end; from[k] >= 0; k = from[k]) {
            kindOf[mover[from[k]][k]] = k;
            end = from[k];
        }
        kindOf[next] = end;
        return true;
    }

    /** Cheapest move of a seated set-up from each kind to each other; {@code mover} receives which. */
    private static double[][] moves(Seating seating, int[] setups, int[] kindOf, int[][] mover) {
        double[][] move = new double[mover.length][mover.length];
        for (double[] row : move) {
            Arrays.fill(row, Double.POSITIVE_INFINITY);
        }
        for (int i = 0; i < setups.length; i++) {
            int k = kindOf[i];
            for (int l = 0; k >= 0 && l < move.length; l++) {
                double by = seating.cost()[setups[i]][l] - seating.cost()[setups[i]][k];
                if (l != k && by < move[k][l]) {
                    move[k][l] = by;
                    mover[k][l] = i;
                }
            }
        }
        return move;
    }
}
