// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.advice;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

import punchwright.engine.tooling.Tool;

/**
 * The least that an order can cost on a machine with one tool more: what it saves at most.
 *
 * <p>Parts that the tool does not touch stay as they are, and so do the set-ups of their tools. A part that it touches costs at
 * least its {@link PartFloor}; a tool of its best ways is either kept, and pays its changes and once its set-up, or the regret of
 * all its units is paid, whichever is less.
 */
final class SavingBound {

    private final Book book;
    private final BookCost today;

    SavingBound(Book book, BookCost today) {
        this.book = book;
        this.today = today;
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
            double change = book.floor().leastChangeSeconds(m) * money;
            ownChange = Math.min(ownChange, change);
            PartFloor.Floor floor = book.floor().of(m, book.part(order.demands().get(i)), tool);
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
}
