// SPDX-License-Identifier: EPL-2.0
package punchwright.benchmarks.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import punchwright.engine.nesting.bars.BarKind;
import punchwright.engine.nesting.bars.BarPlan;
import punchwright.engine.nesting.bars.BarProblem;
import punchwright.engine.nesting.bars.Pattern;

/**
 * A seeded order along bars in mm: 3 to 20 parts of 80 to 2400, 1 to 40 pieces each, web 0 to 5; bars of 6000, and in two groups
 * of three up to three more lengths of 2500 to 7000 at 0.85 to 1.15 of the same price for the length, half of them with 1 to 15
 * on hand; in the last group rests of 500 up keep 30 to 80 per cent of their price.
 */
record BarCase(String group, BarProblem problem) {

    private static final int PLENTY = 100_000;

    static BarCase of(long seed) {
        SplittableRandom r = new SplittableRandom(seed);
        int group = (int) (seed % 3);
        int parts = 3 + r.nextInt(18);
        int web = r.nextInt(6);
        int[] lengths = r.ints(parts, 80, 2400).map(l -> l + web).toArray();
        int[] demand = r.ints(parts, 1, 41).toArray();
        int bars = group == 0 ? 1 : 2 + r.nextInt(3);
        int[] onHand = new int[bars];
        List<BarKind> kinds = new ArrayList<>();
        List<BarKind> kept = new ArrayList<>();
        double share = r.nextInt(3, 9) / 10.0;
        for (int i = 0; i < bars; i++) {
            int length = i == 0 ? 6000 : r.nextInt(25, 71) * 100;
            int edge = r.nextInt(0, 21);
            double price = Math.round(length * r.nextDouble(0.85, 1.15)) / 100.0;
            onHand[i] = i == 0 || r.nextBoolean() ? PLENTY : r.nextInt(1, 16);
            kinds.add(new BarKind(length - 2 * edge + web, lengths, price, 0, i));
            double perMm = share * price / length;
            kept.add(new BarKind(length - edge - 500, lengths, price - perMm * (length - edge), perMm, i));
        }
        kinds.addAll(group == 2 ? kept : List.of());
        return new BarCase(List.of("one length", "several", "kept rests").get(group), new BarProblem(kinds, onHand, demand));
    }

    /** What is wrong with a plan, or nothing: pieces, lengths, bars on hand and cost are counted again. */
    String check(BarPlan plan) {
        int[] made = new int[problem.demand().length];
        int[] used = new int[problem.onHand().length];
        double cost = 0;
        for (Map.Entry<Pattern, Integer> e : plan.runs().entrySet()) {
            BarKind kind = problem.kinds().get(e.getKey().kind());
            long length = 0;
            for (int j = 0; j < made.length; j++) {
                made[j] += e.getValue() * e.getKey().counts()[j];
                length += (long) e.getKey().counts()[j] * kind.lengths()[j];
            }
            if (length > kind.capacity()) {
                return "bar of " + kind.capacity() + " holds " + length;
            }
            used[kind.stock()] += e.getValue();
            cost += e.getValue() * (kind.cost() + kind.costPerUnit() * length);
        }
        for (int j = 0; j < made.length; j++) {
            if (made[j] != problem.demand()[j]) {
                return "part " + j + ": " + made[j] + " pieces, not " + problem.demand()[j];
            }
        }
        for (int s = 0; s < used.length; s++) {
            if (used[s] > problem.onHand()[s]) {
                return "stock " + s + ": " + used[s] + " bars, not " + problem.onHand()[s];
            }
        }
        return Math.abs(cost - plan.cost()) > 1e-6 ? "cost " + cost + ", not " + plan.cost() : "";
    }
}
