// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.holding;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * The fewest carriage positions for one clamp setting.
 *
 * <p>Branches on the open need with the least x. A position that serves it can be shifted away from the served side until a
 * clamp or the end of that need's own reach stops it, without losing an open need; so only those stops are tried.
 */
final class StandSearch {

    private static final int MOST_STOPS = 40;

    private final Rig rig;
    private final double[] clamps;
    private final int sides;
    private final List<Need> needs;
    private final List<Stand> stands = new ArrayList<>();
    private long visits;

    /** @param sides 1 to keep the sheet as loaded, 2 to allow the turn */
    StandSearch(Rig rig, double[] clamps, int sides) {
        this.rig = rig;
        this.clamps = clamps;
        this.sides = sides;
        this.needs = rig.needs.stream().filter(this::servable).toList();
    }

    /** Needs that no position serves with these clamps. */
    int hopeless() {
        return rig.needs.size() - needs.size();
    }

    /**
     * At most {@code count} positions that serve every servable need, or null; gives up after {@code visitLimit} looks at a need.
     */
    List<Stand> find(int count, long visitLimit) {
        visits = visitLimit;
        stands.clear();
        BitSet open = new BitSet(needs.size());
        open.set(0, needs.size());
        return search(open, count) ? List.copyOf(stands) : null;
    }

    private boolean servable(Need need) {
        for (int side = 0; side < sides; side++) {
            boolean clear = !need.nearEdge()[side] && need.reachedY()[side]
                    && need.x()[side] >= rig.leastZero(clamps) - 1e-9
                    && need.x()[side] - rig.travelMm <= rig.largestZero(clamps) + 1e-9;
            if (clear || !stops(need, side, List.of(need)).isEmpty()) {
                return true;
            }
        }
        return false;
    }

    private boolean search(BitSet open, int count) {
        if (open.isEmpty()) {
            return true;
        }
        if (visits <= 0 || bound(open) > count) {
            return false;
        }
        Need first = needs.get(open.nextSetBit(0));
        List<Need> left = open.stream().mapToObj(needs::get).toList();
        List<Branch> branches = new ArrayList<>();
        for (int side = 0; side < sides; side++) {
            for (double zero : stops(first, side, left)) {
                branches.add(branch(new Stand(side, zero), open));
            }
        }
        visits -= (long) left.size() * (1 + branches.size());
        branches.sort(Comparator.comparingInt(b -> -b.served.cardinality()));
        for (Branch b : branches) {
            BitSet rest = (BitSet) open.clone();
            rest.andNot(b.served);
            stands.add(b.stand);
            if (search(rest, count - 1)) {
                return true;
            }
            stands.remove(stands.size() - 1);
        }
        return false;
    }

    private record Branch(Stand stand, BitSet served) {
    }

    private Branch branch(Stand stand, BitSet open) {
        BitSet served = new BitSet(needs.size());
        for (int i = open.nextSetBit(0); i >= 0; i = open.nextSetBit(i + 1)) {
            if (needs.get(i).met(stand.side(), stand.zero(), clamps, rig.travelMm)) {
                served.set(i);
            }
        }
        return new Branch(stand, served);
    }

    /** Positions for {@code first}: the end of its reach and every stop at a clamp, seen from the open needs. */
    private Set<Double> stops(Need first, int side, List<Need> open) {
        double low = Math.max(rig.leastZero(clamps), first.x()[side] - rig.travelMm);
        double high = Math.min(rig.largestZero(clamps), first.x()[side]);
        Set<Double> stops = new LinkedHashSet<>();
        if (!first.reachedY()[side] || low > high + 1e-9) {
            return stops;
        }
        stops.add(side == 0 ? high : low);
        for (Need n : open) {
            if (n.nearEdge()[side]) {
                for (double u : clamps) {
                    double stop = n.x()[side] - u + (side == 0 ? -n.keepMm() : n.keepMm());
                    if (stop >= low && stop <= high) {
                        stops.add(stop);
                    }
                }
            }
        }
        stops.removeIf(zero -> !first.met(side, zero, clamps, rig.travelMm));
        return stops.size() <= MOST_STOPS ? stops : sample(stops);
    }

    private static Set<Double> sample(Set<Double> stops) {
        List<Double> sorted = new ArrayList<>(new TreeSet<>(stops));
        Set<Double> some = new LinkedHashSet<>();
        for (int i = 0; i < MOST_STOPS; i++) {
            some.add(sorted.get((int) ((long) i * (sorted.size() - 1) / (MOST_STOPS - 1))));
        }
        return some;
    }

    /** Positions that reach alone asks for: each side's own needs one travel after the other. */
    private int bound(BitSet open) {
        int count = 0;
        double[] until = {Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
        for (int i = open.nextSetBit(0); i >= 0; i = open.nextSetBit(i + 1)) {
            Need n = needs.get(i);
            int side = sides == 1 || !n.reachedY()[1] ? 0 : !n.reachedY()[0] ? 1 : -1;
            if (side >= 0 && n.x()[0] > until[side] + 2e-6) {
                count++;
                until[side] = n.x()[0] + rig.travelMm;
            }
        }
        return Math.max(1, count);
    }

    /** Lower bound for all needs, from reach alone. */
    int bound() {
        BitSet all = new BitSet(needs.size());
        all.set(0, needs.size());
        return needs.isEmpty() ? 0 : bound(all);
    }
}
