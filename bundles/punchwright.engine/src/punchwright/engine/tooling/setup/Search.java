// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling.setup;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

import punchwright.engine.tooling.setup.SetupProblem.Option;

/**
 * Good choices by local search on the set of set-ups in use: take one out, put one in, exchange two. A choice counts with its
 * exact seats; moves are first weighed at the present prices of seats, so that only promising ones are worked out.
 */
final class Search {

    private static final double LITTLE = 1e-9;
    private static final int MOST_ROUNDS = 12;

    private final SetupProblem p;
    private final List<List<int[]>> usersOf = new ArrayList<>();
    private int[] best;
    private double bestCost = Double.POSITIVE_INFINITY;

    Search(SetupProblem p) {
        this.p = p;
        IntStream.range(0, p.setups()).forEach(s -> usersOf.add(new ArrayList<>()));
        for (int t = 0; t < p.tasks().size(); t++) {
            for (int o = 0; o < p.tasks().get(t).size(); o++) {
                for (int s : p.tasks().get(t).get(o).setups()) {
                    usersOf.get(s).add(new int[] { t, o });
                }
            }
        }
    }

    int[] best() {
        return best;
    }

    double bestCost() {
        return bestCost;
    }

    /** The cost of a choice with its exact seats; infinite where it breaks a limit. */
    static double cost(SetupProblem p, int[] choice) {
        boolean[] used = new boolean[p.setups()];
        double cost = 0;
        for (int t = 0; t < choice.length; t++) {
            Option o = p.tasks().get(t).get(choice[t]);
            cost += o.cost();
            for (int s : o.setups()) {
                used[s] = true;
            }
        }
        int[] count = new int[p.limits().length];
        for (int s = 0; s < used.length; s++) {
            cost += used[s] ? p.setupCost()[s] : 0;
            if (used[s] && p.limitOf()[s] >= 0 && ++count[p.limitOf()[s]] > p.limits()[p.limitOf()[s]]) {
                return Double.POSITIVE_INFINITY;
            }
        }
        int[] open = IntStream.range(0, used.length).filter(s -> used[s]).toArray();
        return p.seating() == null ? cost : cost + SeatPlan.of(p.seating(), open).cost();
    }

    /** Looks at a choice that may be good. */
    void offer(int[] choice) {
        double cost = cost(p, choice);
        if (cost < bestCost - LITTLE) {
            bestCost = cost;
            best = choice.clone();
        }
    }

    /** Improves from the set-ups that {@code choice} uses, at the prices of the bound. */
    void improve(int[] choice, SetupBound prices) {
        double[] full = IntStream.range(0, p.setups()).mapToDouble(prices::fullCost).toArray();
        boolean[] open = used(choice);
        int[] now = cheapest(open);
        offer(now);
        for (int round = 0; round < MOST_ROUNDS; round++) {
            boolean changed = takeOut(open, full);
            changed |= putIn(open, full);
            if (!changed) {
                break;
            }
            now = cheapest(open);
            open = used(now);
            offer(now);
        }
    }

    private boolean[] used(int[] choice) {
        boolean[] open = new boolean[p.setups()];
        for (int t = 0; t < choice.length; t++) {
            for (int s : p.tasks().get(t).get(choice[t]).setups()) {
                open[s] = true;
            }
        }
        return open;
    }

    private boolean ready(Option o, boolean[] open) {
        for (int s : o.setups()) {
            if (!open[s]) {
                return false;
            }
        }
        return true;
    }

    /** Cheapest option of each task whose set-ups are all there; null when a task has none. */
    private int[] cheapest(boolean[] open) {
        int[] now = new int[p.tasks().size()];
        for (int t = 0; t < now.length; t++) {
            now[t] = cheapest(t, open);
            if (now[t] < 0) {
                return null;
            }
        }
        return now;
    }

    /** Options are in order of cost. */
    private int cheapest(int t, boolean[] open) {
        List<Option> options = p.tasks().get(t);
        for (int o = 0; o < options.size(); o++) {
            if (ready(options.get(o), open)) {
                return o;
            }
        }
        return -1;
    }

    private boolean takeOut(boolean[] open, double[] full) {
        boolean changed = false;
        int[] now = cheapest(open);
        for (int s = 0; s < open.length; s++) {
            if (open[s]) {
                open[s] = false;
                double more = 0;
                for (int[] user : usersOf.get(s)) {
                    if (now[user[0]] == user[1]) {
                        int next = cheapest(user[0], open);
                        more += next < 0 ? Double.POSITIVE_INFINITY : cost(user[0], next) - cost(user[0], user[1]);
                    }
                }
                if (more < full[s] - LITTLE) {
                    changed = true;
                    now = cheapest(open);
                } else {
                    open[s] = true;
                }
            }
        }
        return changed;
    }

    private boolean putIn(boolean[] open, double[] full) {
        boolean changed = false;
        int[] now = cheapest(open);
        for (int s = 0; s < open.length; s++) {
            if (open[s] || !Double.isFinite(full[s])) {
                continue;
            }
            open[s] = true;
            double less = 0;
            int last = -1;
            for (int[] user : usersOf.get(s)) {
                boolean first = user[0] != last && user[1] < now[user[0]] && ready(p.tasks().get(user[0]).get(user[1]), open);
                less += first ? cost(user[0], now[user[0]]) - cost(user[0], user[1]) : 0;
                last = first ? user[0] : last;
            }
            if (less > full[s] + LITTLE) {
                changed = true;
                now = cheapest(open);
            } else {
                open[s] = false;
            }
        }
        return changed;
    }

    private double cost(int t, int o) {
        return p.tasks().get(t).get(o).cost();
    }

    /** Takes set-ups out of {@code choice} until the seats and limits hold: the greedy fall-back. */
    void makePossible(int[] choice, SetupBound prices) {
        boolean[] open = used(choice);
        double[] full = IntStream.range(0, p.setups()).mapToDouble(prices::fullCost).toArray();
        int[] now = cheapest(open);
        while (now != null && Double.isInfinite(cost(p, now))) {
            int out = -1;
            double least = Double.POSITIVE_INFINITY;
            for (int s = 0; s < open.length; s++) {
                if (open[s]) {
                    open[s] = false;
                    int[] next = cheapest(open);
                    double cost = next == null ? Double.POSITIVE_INFINITY : own(next) - full[s];
                    if (cost < least) {
                        least = cost;
                        out = s;
                    }
                    open[s] = true;
                }
            }
            if (out < 0) {
                return;
            }
            open[out] = false;
            now = cheapest(open);
        }
        if (now != null) {
            offer(now);
            improve(now, prices);
        }
    }

    private double own(int[] choice) {
        return IntStream.range(0, choice.length).mapToDouble(t -> cost(t, choice[t])).sum();
    }

    int[] firstOptions() {
        int[] first = new int[p.tasks().size()];
        Arrays.fill(first, 0);
        return first;
    }
}
