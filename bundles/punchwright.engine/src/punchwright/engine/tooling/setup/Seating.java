// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling.setup;

import java.util.List;

/**
 * Where set-ups may stand: kinds of seats with room, and carriers that take one seat and give several.
 *
 * @param room     for each kind of seat how many there are without any carrier
 * @param cost     for each set-up and kind of seat its cost there; infinite where it does not fit
 * @param carriers kinds of carriers, each giving seats of a kind of its own
 */
public record Seating(int[] room, double[][] cost, List<Carrier> carriers) {

    public Seating {
        carriers = List.copyOf(carriers);
    }

    /**
     * One kind of carrier: a multi-tool holder.
     *
     * @param kind  kind of the seats it gives
     * @param seats seats that one gives
     * @param most  carriers of this kind that may be used
     * @param cost  cost of using one
     * @param in    kinds of seats in which it may stand itself
     */
    public record Carrier(int kind, int seats, int most, double cost, int[] in) {
    }

    public int kinds() {
        return room.length;
    }

    /** Least cost of a set-up in any kind of seat; infinite when it fits nowhere. */
    public double least(int setup) {
        double least = Double.POSITIVE_INFINITY;
        for (double c : cost[setup]) {
            least = Math.min(least, c);
        }
        return least;
    }
}
