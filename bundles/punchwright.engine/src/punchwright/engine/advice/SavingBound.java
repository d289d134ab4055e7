// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.advice;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

import punchwright.engine.press.Times;
import punchwright.engine.tooling.Alternative;
import punchwright.engine.tooling.ChoiceWeights;
import punchwright.engine.tooling.FeatureWays;
import punchwright.engine.tooling.Tool;
import punchwright.engine.tooling.ToolWeighing;

/**
 * The least that an order can cost on a machine with one tool more, from today's alternatives: what it saves at most.
 *
 * <p>A unit that the tool meets costs at least the lesser of its cheapest alternative and of {@link LeastCost}; another one its
 * cheapest alternative. Beyond that each tool of a best alternative is either kept, and pays its changes and its set-up, or every
 * unit whose best way needs it pays the regret to its best way without it; the lesser of both is taken. Regret of a unit counts
 * for one tool only. Valid for any choice among the same candidates.
 */
final class SavingBound {

    private final Book book;
    private final BookCost today;
    private final Map<String, LeastCost> least = new LinkedHashMap<>();

    SavingBound(Book book, BookCost today) {
        this.book = book;
        this.today = today;
    }

    /** Cost without changes, s, and by tool the regret of doing without it, s. */
    private record Floor(double seconds, Map<String, Double> regrets) {
    }

    /** Currency a run; {@code now} is the order on the machine today. */
    double leastCost(BookOrder order, OrderOnMachine now, Owned owned) {
        int m = now.machine();
        double sum = 0;
        for (List<Integer> sheet : book.sheets(order).values()) {
            List<Integer> made = sheet.stream().filter(i -> now.lines().get(i).made()).toList();
            Set<Integer> touched = made.stream().filter(i -> book.touches(m, book.part(order.demands().get(i)), owned))
                    .collect(Collectors.toCollection(TreeSet::new));
            sum += sheet(order, now, made, touched, owned);
        }
        return sum;
    }

    private double sheet(BookOrder order, OrderOnMachine now, List<Integer> made, Set<Integer> touched, Owned owned) {
        int m = now.machine();
        double setUp = today.perSetUp(m);
        Set<String> tools = made.stream().flatMap(i -> now.lines().get(i).choice().used().keySet().stream())
                .collect(Collectors.toCollection(TreeSet::new));
        double cost = tools.size() * setUp + made.stream().mapToDouble(i -> now.lines().get(i).cost()).sum();
        if (touched.isEmpty()) {
            return cost;
        }
        Set<String> kept = new TreeSet<>();
        double least = setUp;
        for (int i : made) {
            if (!touched.contains(i)) {
                PartLine line = now.lines().get(i);
                kept.addAll(line.choice().used().keySet());
                least += order.demands().get(i).quantity() * line.choice().costSeconds() * book.rate(m) / 3600;
            }
        }
        least += kept.size() * setUp + touched(order, m, touched, kept, owned.addition().tool());
        return Math.min(cost, least);
    }

    private double touched(BookOrder order, int m, Set<Integer> touched, Set<String> kept, Tool tool) {
        double sum = 0;
        Map<String, double[]> byTool = new TreeMap<>();
        double ownChange = Double.POSITIVE_INFINITY;
        for (int i : touched) {
            double money = order.demands().get(i).quantity() * book.rate(m) / 3600;
            double change = changeSeconds(m) * money;
            ownChange = Math.min(ownChange, change);
            Floor floor = floor(m, book.part(order.demands().get(i)), tool);
            sum += floor.seconds() * money;
            floor.regrets().forEach((id, seconds) -> {
                double[] without = byTool.computeIfAbsent(id, k -> new double[2]);
                without[0] += seconds * money;
                without[1] += Math.min(change, seconds * money);
            });
        }
        for (Map.Entry<String, double[]> e : byTool.entrySet()) {
            double keep = e.getValue()[1] + (kept.contains(e.getKey()) ? 0 : today.perSetUp(m));
            sum += Math.min(e.getValue()[0], keep);
        }
        return sum + ownChange;
    }

    /** Least time of a change shared among the parts of a sheet, s a piece. */
    private double changeSeconds(int m) {
        Times t = book.job().machines().get(m).machine().times();
        double least = BookCost.byHandOnly(t) && !book.job().holders().isEmpty() ? Math.min(t.toolChangeS(), t.insertChangeS())
                : t.toolChangeS();
        return least / ChoiceWeights.USUAL.partsPerChange();
    }

    private Floor floor(int m, BookPart part, Tool tool) {
        ToolWeighing w = book.weighed(m, part);
        LeastCost with = least.computeIfAbsent(m + "|" + part.number(), k -> new LeastCost(book.tooling(m, part, Owned.today(book
                .job())), part.weights(book.rate(m))));
        double sum = 0;
        Map<String, Double> regrets = new TreeMap<>();
        for (FeatureWays unit : w.ways()) {
            double cheapest = unit.alternatives().stream().mapToDouble(Alternative::costSeconds).min().orElse(0);
            double own = with.seconds(unit.features(), tool);
            sum += Math.min(cheapest, own);
            if (Double.isInfinite(own)) {
                addRegret(unit, cheapest, regrets);
            }
        }
        return new Floor(sum, regrets);
    }

    /** The regret of the tool that is missed most. */
    private static void addRegret(FeatureWays unit, double cheapest, Map<String, Double> regrets) {
        String most = null;
        double largest = 0;
        Set<String> candidates = new TreeSet<>();
        unit.alternatives().stream().filter(a -> a.costSeconds() <= cheapest + 1e-9)
                .forEach(a -> a.tools().forEach(t -> candidates.add(t.id())));
        for (String id : candidates) {
            double without = unit.alternatives().stream().filter(a -> a.tools().stream().noneMatch(t -> t.id().equals(id)))
                    .mapToDouble(Alternative::costSeconds).min().orElse(Double.POSITIVE_INFINITY);
            if (without - cheapest > largest) {
                largest = without - cheapest;
                most = id;
            }
        }
        if (most != null) {
            regrets.merge(most, largest, Double::sum);
        }
    }
}
