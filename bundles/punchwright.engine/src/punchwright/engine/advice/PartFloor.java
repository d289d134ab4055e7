// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.advice;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

import punchwright.engine.press.Times;
import punchwright.engine.tooling.Alternative;
import punchwright.engine.tooling.ChoiceWeights;
import punchwright.engine.tooling.FeatureWays;
import punchwright.engine.tooling.Tool;
import punchwright.engine.tooling.ToolWeighing;

/**
 * The least that a part can cost on a machine when one tool more takes part in making it, from today's alternatives.
 *
 * <p>A unit costs at least the lesser of its cheapest alternative and of {@link LeastCost}. Beyond that each tool of a best
 * alternative is either kept, and pays its change, or every unit whose best way needs it pays the regret to its best way without
 * it; the regret of a unit counts for one tool only. Valid for any choice among the same candidates.
 */
final class PartFloor {

    private final Book book;
    private final Map<String, LeastCost> least = new LinkedHashMap<>();

    PartFloor(Book book) {
        this.book = book;
    }

    /** Cost without changes, s, and by tool the regret of doing without it, s. */
    record Floor(double seconds, Map<String, Double> regrets) {
    }

    Floor of(int m, BookPart part, Tool tool) {
        ToolWeighing w = book.weighed(m, part);
        LeastCost with = least.computeIfAbsent(m + "|" + part.number(), k -> new LeastCost(book.tooling(m, part, Owned.today(book
                .job())), part.weights(book.rate(m))));
        double sum = 0;
        Map<String, Double> regrets = new TreeMap<>();
        for (FeatureWays unit : w.ways()) {
            double cheapest = unit.alternatives().stream().mapToDouble(Alternative::costSeconds).min().orElse(0);
            double own = with.seconds(unit.features(), tool);
            sum += Math.min(cheapest, own);
            if (own > cheapest) {
                addRegret(unit, cheapest, own, regrets);
            }
        }
        return new Floor(sum, regrets);
    }

    /** Whether the tool can take part in a choice that costs less than today's, s a piece. */
    boolean gains(int m, BookPart part, Tool tool) {
        Floor floor = of(m, part, tool);
        double change = changeSeconds(m);
        double sum = floor.seconds() + change + floor.regrets().values().stream().mapToDouble(r -> Math.min(r, change)).sum();
        return sum < book.weighed(m, part).costSeconds() - 1e-9;
    }

    /** The regret of the tool that is missed most. */
    private static void addRegret(FeatureWays unit, double cheapest, double own, Map<String, Double> regrets) {
        String most = null;
        double largest = 0;
        Set<String> candidates = new TreeSet<>();
        unit.alternatives().stream().filter(a -> a.costSeconds() <= cheapest + 1e-9)
                .forEach(a -> a.tools().forEach(t -> candidates.add(t.id())));
        for (String id : candidates) {
            double without = unit.alternatives().stream().filter(a -> a.tools().stream().noneMatch(t -> t.id().equals(id)))
                    .mapToDouble(Alternative::costSeconds).min().orElse(Double.POSITIVE_INFINITY);
            double regret = Math.min(without, own) - cheapest;
            if (regret > largest) {
                largest = regret;
                most = id;
            }
        }
        if (most != null) {
            regrets.merge(most, largest, Double::sum);
        }
    }

    /** Least time of a change shared among the parts of a sheet, s a piece. */
    double changeSeconds(int m) {
        return book.job().machines().get(m).machine().times().toolChangeS() / ChoiceWeights.USUAL.partsPerChange();
    }

    /** The same where later inserts of a holder change faster. */
    double leastChangeSeconds(int m) {
        Times t = book.job().machines().get(m).machine().times();
        return BookCost.byHandOnly(t) && !book.job().holders().isEmpty()
                ? Math.min(t.toolChangeS(), t.insertChangeS()) / ChoiceWeights.USUAL.partsPerChange() : changeSeconds(m);
    }
}
