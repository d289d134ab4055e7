// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling.setup;

import java.util.List;

import punchwright.engine.tooling.setup.Seating.Carrier;
import punchwright.engine.tooling.setup.SetupProblem.Option;

/**
 * A bound that no choice undercuts: every task pays a price for each set-up it uses, every set-up a price for its seat and its
 * limit; at these prices tasks, set-ups and carriers decide by themselves.
 *
 * <p>{@code bound = sum_t min_o (cost + prices) + sum_s min(0, F_s - prices paid) - seat prices x room - limit prices x limit +
 * carriers where their seats sell for more than they cost}. Valid for all prices at or above 0 (Lagrangian relaxation; Fisher
 * 1981, from memory). {@link #step} moves the prices along the subgradient.
 */
final class SetupBound {

    private final SetupProblem p;
    private final Seating seating;
    /** For each task and option the numbers of the task's own prices. */
    private final int[][][] priceOf;
    /** For each task the set-up of each price. */
    private final int[][] setupOf;
    private final double[][] price;
    private final double[] seatPrice;
    private final double[] limitPrice;

    final int[] choice;
    final boolean[] open;
    final double[] reduced;
    final double[] taskLeast;
    private final int[] kind;
    private final int[] used;
    private final int[] inKind;
    double value;

    SetupBound(SetupProblem p) {
        this.p = p;
        seating = p.seating();
        int n = p.tasks().size();
        priceOf = new int[n][][];
        setupOf = new int[n][];
        price = new double[n][];
        int[] users = new int[p.setups()];
        for (int t = 0; t < n; t++) {
            index(t, users);
        }
        int kinds = seating == null ? 0 : seating.kinds();
        seatPrice = new double[kinds];
        limitPrice = new double[p.limits().length];
        choice = new int[n];
        open = new boolean[p.setups()];
        reduced = new double[p.setups()];
        taskLeast = new double[n];
        kind = new int[p.setups()];
        used = new int[seating == null ? 0 : seating.carriers().size()];
        inKind = new int[used.length];
        for (int t = 0; t < n; t++) {
            for (int i = 0; i < price[t].length; i++) {
                double cost = p.setupCost()[setupOf[t][i]] + (seating == null ? 0 : seating.least(setupOf[t][i]));
                price[t][i] = Double.isFinite(cost) ? cost / users[setupOf[t][i]] : 0;
            }
        }
    }

    private void index(int t, int[] users) {
        List<Option> options = p.tasks().get(t);
        int[] all = options.stream().flatMapToInt(o -> java.util.Arrays.stream(o.setups())).distinct().sorted().toArray();
        setupOf[t] = all;
        price[t] = new double[all.length];
        priceOf[t] = new int[options.size()][];
        for (int o = 0; o < options.size(); o++) {
            priceOf[t][o] = java.util.Arrays.stream(options.get(o).setups())
                    .map(s -> java.util.Arrays.binarySearch(all, s)).toArray();
        }
        for (int s : all) {
            users[s]++;
        }
    }

    /** Cost of an option with the prices its task pays. */
    double priced(int t, int o) {
        double cost = p.tasks().get(t).get(o).cost();
        for (int i : priceOf[t][o]) {
            cost += price[t][i];
        }
        return cost;
    }

    /** Works out the bound at the present prices. */
    void evaluate() {
        value = 0;
        double[] paid = new double[p.setups()];
        for (int t = 0; t < choice.length; t++) {
            taskLeast[t] = Double.POSITIVE_INFINITY;
            for (int o = 0; o < priceOf[t].length; o++) {
                double cost = priced(t, o);
                if (cost < taskLeast[t]) {
                    taskLeast[t] = cost;
                    choice[t] = o;
                }
            }
            value += taskLeast[t];
            for (int i = 0; i < price[t].length; i++) {
                paid[setupOf[t][i]] += price[t][i];
            }
        }
        for (int s = 0; s < paid.length; s++) {
            reduced[s] = full(s) - paid[s];
            open[s] = reduced[s] < 0;
            value += Math.min(0, reduced[s]);
        }
        for (int l = 0; l < limitPrice.length; l++) {
            value -= limitPrice[l] * p.limits()[l];
        }
        carriers();
    }

    /** Cost of a set-up with the prices of its limit and its cheapest seat. */
    private double full(int s) {
        double cost = p.setupCost()[s] + (p.limitOf()[s] >= 0 ? limitPrice[p.limitOf()[s]] : 0);
        double least = seating == null ? 0 : Double.POSITIVE_INFINITY;
        for (int k = 0; k < seatPrice.length; k++) {
            double c = seating.cost()[s][k] + seatPrice[k];
            if (c < least) {
                least = c;
                kind[s] = k;
            }
        }
        return cost + least;
    }

    private void carriers() {
        for (int k = 0; k < seatPrice.length; k++) {
            value -= seatPrice[k] * seating.room()[k];
        }
        for (int c = 0; c < used.length; c++) {
            Carrier carrier = seating.carriers().get(c);
            inKind[c] = carrier.in()[0];
            for (int k : carrier.in()) {
                inKind[c] = seatPrice[k] < seatPrice[inKind[c]] ? k : inKind[c];
            }
            double each = carrier.cost() + seatPrice[inKind[c]] - carrier.seats() * seatPrice[carrier.kind()];
            used[c] = each < 0 ? carrier.most() : 0;
            value += each < 0 ? each * carrier.most() : 0;
        }
    }

    /** One subgradient step towards {@code target}; {@code scale} 0 to 2. */
    void step(double target, double scale) {
        double square = 0;
        boolean[] uses = new boolean[p.setups()];
        for (int t = 0; t < choice.length; t++) {
            mark(t, uses, true);
            for (int s : setupOf[t]) {
                square += uses[s] != open[s] ? 1 : 0;
            }
            mark(t, uses, false);
        }
        double[] seats = seatGradient();
        double[] over = limitGradient();
        for (double g : seats) {
            square += g * g;
        }
        for (double g : over) {
            square += g * g;
        }
        double step = square == 0 ? 0 : scale * Math.max(0, target - value) / square;
        for (int t = 0; t < choice.length; t++) {
            mark(t, uses, true);
            for (int i = 0; i < setupOf[t].length; i++) {
                int s = setupOf[t][i];
                price[t][i] = Math.max(0, price[t][i] + step * ((uses[s] ? 1 : 0) - (open[s] ? 1 : 0)));
            }
            mark(t, uses, false);
        }
        for (int k = 0; k < seats.length; k++) {
            seatPrice[k] = Math.max(0, seatPrice[k] + step * seats[k]);
        }
        for (int l = 0; l < over.length; l++) {
            limitPrice[l] = Math.max(0, limitPrice[l] + step * over[l]);
        }
    }

    private void mark(int t, boolean[] uses, boolean on) {
        for (int s : p.tasks().get(t).get(choice[t]).setups()) {
            uses[s] = on;
        }
    }

    private double[] seatGradient() {
        double[] g = new double[seatPrice.length];
        for (int s = 0; s < open.length && g.length > 0; s++) {
            g[kind[s]] += open[s] ? 1 : 0;
        }
        for (int k = 0; k < g.length; k++) {
            g[k] -= seating.room()[k];
        }
        for (int c = 0; c < used.length; c++) {
            g[inKind[c]] += used[c];
            g[seating.carriers().get(c).kind()] -= used[c] * seating.carriers().get(c).seats();
        }
        for (int k = 0; k < g.length; k++) {
            g[k] = seatPrice[k] == 0 && g[k] < 0 ? 0 : g[k];
        }
        return g;
    }

    private double[] limitGradient() {
        double[] g = new double[limitPrice.length];
        for (int s = 0; s < open.length; s++) {
            if (p.limitOf()[s] >= 0) {
                g[p.limitOf()[s]] += open[s] ? 1 : 0;
            }
        }
        for (int l = 0; l < g.length; l++) {
            g[l] -= p.limits()[l];
            g[l] = limitPrice[l] == 0 && g[l] < 0 ? 0 : g[l];
        }
        return g;
    }

    double[][] prices() {
        return java.util.Arrays.stream(price).map(double[]::clone).toArray(double[][]::new);
    }

    /** Prices to return to: those of the best bound so far. */
    record Kept(double[][] price, double[] seat, double[] limit) {
    }

    Kept keep() {
        return new Kept(prices(), seatPrice.clone(), limitPrice.clone());
    }

    void restore(Kept kept) {
        for (int t = 0; t < price.length; t++) {
            System.arraycopy(kept.price()[t], 0, price[t], 0, price[t].length);
        }
        System.arraycopy(kept.seat(), 0, seatPrice, 0, seatPrice.length);
        System.arraycopy(kept.limit(), 0, limitPrice, 0, limitPrice.length);
        evaluate();
    }

    /** What a set-up costs at the present prices of seats and limits. */
    double fullCost(int s) {
        return full(s);
    }
}
