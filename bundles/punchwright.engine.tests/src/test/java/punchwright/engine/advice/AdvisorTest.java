// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Point;
import punchwright.engine.planning.CancelledException;
import punchwright.engine.planning.PartDemand;
import punchwright.engine.planning.Progress;
import punchwright.engine.tooling.Tool;
import punchwright.engine.tooling.ToolChoice;
import punchwright.engine.tooling.ToolShape;
import punchwright.engine.tooling.ToolWeighing;
import punchwright.engine.tooling.ToolWishes;
import punchwright.engine.tooling.ToolingJob;
import punchwright.engine.tooling.ToolingRules;

/** The ranking against brute force, and what comes with it. */
class AdvisorTest {

    private static List<BookOrder> book(int seed) {
        Random random = new Random(seed);
        return List.of(new BookOrder("A", 12, List.of(makeable("a1", random), makeable("a2", random))),
                new BookOrder("B", 30, List.of(makeable("b1", random))));
    }

    /** The next plate that the tools owned make: what is refused today has no cost to compare. */
    private static PartDemand makeable(String id, Random random) {
        PartDemand plate = SmallShop.randomPlate(id, random);
        while (!choice(plate, SmallShop.tools()).operations().complete()) {
            plate = SmallShop.randomPlate(id, random);
        }
        return plate;
    }

    /**
     * Yearly cost of an order with tools; a part takes the cheaper of both libraries, {@code today} holds the choices without.
     */
    private static double bruteForce(BookOrder order, Map<PartDemand, ToolWeighing> today, Tool more) {
        double cost = 0;
        Set<String> used = new HashSet<>();
        for (PartDemand d : order.demands()) {
            ToolWeighing without = today.get(d);
            ToolWeighing with = more == null ? without
                    : choice(d, Stream.concat(SmallShop.tools().stream(), Stream.of(more)).toList());
            ToolWeighing best = with.operations().complete() && with.costSeconds() < without.costSeconds() ? with : without;
            assertTrue(best.operations().complete());
            cost += d.quantity() * best.costSeconds() * 90 / 3600;
            best.operations().operations().forEach(o -> used.add(o.tool().id()));
        }
        return order.timesPerYear() * (cost + used.size() * 2.5 / 60 * (42 + 90));
    }

    private static ToolWeighing choice(PartDemand d, List<Tool> tools) {
        BookPart part = BookPart.of(0, d);
        return ToolChoice.price(new ToolingJob(part.features(), d.material(), d.thicknessMm(), SmallShop.press(14), tools,
                List.of(),
                ToolingRules.USUAL), part.weights(90), ToolWishes.NONE);
    }

    /** Choices with the tools of today: the same whatever is looked at besides. */
    private static Map<PartDemand, ToolWeighing> today(List<BookOrder> orders, List<Tool> tools) {
        Map<PartDemand, ToolWeighing> today = new IdentityHashMap<>();
        orders.stream().flatMap(o -> o.demands().stream()).forEach(d -> today.put(d, choice(d, tools)));
        return today;
    }

    @ParameterizedTest
    @ValueSource(ints = { 1, 2, 3 })
    void theRankingIsThatOfBruteForceAndNoBoundIsBelowItsSaving(int seed) {
        List<Tool> tools = SmallShop.tools();
        AdviceJob job = SmallShop.job(book(seed), tools, SmallShop.options(5, true));
        Advice advice = Advisor.advise(job, Progress.SILENT);

        Book book = new Book(job, Progress.SILENT);
        Today today = new Today(book);
        SavingBound bound = new SavingBound(book, today.cost());
        Map<PartDemand, ToolWeighing> owned = today(job.orders(), tools);
        Map<String, Double> savings = new TreeMap<>();
        for (Addition a : Additions.of(book, today.cost())) {
            if (a.kind() == AdditionKind.TOOL) {
                double saving = 0;
                for (BookOrder o : job.orders()) {
                    saving += Math.max(0, bruteForce(o, owned, null) - bruteForce(o, owned, a.tool()));
                }
                savings.put(a.id(), saving);
                double most = new Prospect(book, today, bound, a).most();
                assertTrue(most >= saving - 1e-6, a.name() + " saves " + saving + ", bound " + most);
            }
        }
        List<Double> best = savings.values().stream().sorted((x, y) -> Double.compare(y, x)).filter(s -> s > 0.005).limit(5)
                .toList();
        assertFalse(best.isEmpty(), "nothing saves: the case tests nothing");
        assertEquals(best.size(), advice.ranking().size());
        for (int i = 0; i < best.size(); i++) {
            Recommendation r = advice.ranking().get(i);
            assertEquals(best.get(i), r.saving().perYear(), 1e-6, "rank " + (i + 1) + " " + r.addition().name());
            assertEquals(savings.get(r.addition().id()), r.saving().perYear(), 1e-6, r.addition().name());
            assertEquals(r.addition().price().value() / (r.saving().perYear() + r.saving().depreciation()), r.paybackYears(),
                    1e-9);
        }
    }

    @Test
    void withoutBoundAndMemoryTheRankingIsTheSameAndTheBoundSavesWork() {
        List<BookOrder> orders = book(4);
        Advice all = Advisor.advise(SmallShop.job(orders, SmallShop.tools(), SmallShop.options(3, false)), Progress.SILENT);
        Advice pruned = Advisor.advise(SmallShop.job(orders, SmallShop.tools(), SmallShop.options(3, true)), Progress.SILENT);
        Advice again = Advisor.advise(SmallShop.job(orders, SmallShop.tools(), SmallShop.options(3, true)), Progress.SILENT);

        assertEquals(all.additions(), all.workedOut());
        assertTrue(pruned.choices() < all.choices(), pruned.choices() + " of " + all.choices());
        assertEquals(ids(all), ids(pruned));
        assertEquals(ids(pruned), ids(again));
        for (int i = 0; i < all.ranking().size(); i++) {
            assertEquals(all.ranking().get(i).saving().perYear(), pruned.ranking().get(i).saving().perYear(), 1e-6);
            assertEquals(pruned.ranking().get(i).saving(), again.ranking().get(i).saving());
        }
    }

    private static List<String> ids(Advice a) {
        return a.ranking().stream().map(r -> r.addition().id()).toList();
    }

    /** A hole of 4 mm, smaller than every round tool owned, is refused; the tool of that size makes it possible. */
    @Test
    void whatIsRefusedTodayBecomesPossibleWithItsReason() {
        PartDemand plate = SmallShop.plate("x", 100, 60, 50, List.of(Contour.circle(new Point(50, 30), 4)));
        Advice advice = Advisor.advise(SmallShop.job(List.of(new BookOrder("X-1", 10, List.of(plate))), SmallShop.tools(),
                SmallShop
                .options(5, true)), Progress.SILENT);

        assertEquals(0, advice.today().getFirst().partsMade());
        assertFalse(advice.today().getFirst().refusals().isEmpty());
        Recommendation first = advice.enabling().getFirst();
        assertEquals("new-round-4", first.addition().id());
        MadePossible possible = first.makesPossible().getFirst();
        assertEquals("X-1", possible.order());
        assertTrue(possible.whole() && possible.nowhere());
        assertFalse(possible.today().message().isBlank());
        assertEquals(0, first.saving().perYear(), 1e-9);
    }

    /** One head with a single place and changes by hand: a holder for several inserts saves changes. */
    @Test
    void aHolderIsLookedAtWhereToolsAreSetByHand() {
        List<BookOrder> orders = book(1);
        AdviceJob wide = SmallShop.job(orders, SmallShop.tools(), SmallShop.options(50, true));
        AdviceJob job = new AdviceJob(orders, List.of(new BookMachine(SmallShop.press(1), 90)), wide.tools(), List.of(),
                List.of(), 42,
                2.5, ToolingRules.USUAL, wide.options());
        Advice advice = Advisor.advise(job, Progress.SILENT);
        assertTrue(advice.ranking().stream().anyMatch(r -> r.addition().kind() == AdditionKind.HOLDER && r.saving()
                .perYear() > 0));
        assertTrue(advice.ranking().stream().anyMatch(r -> r.addition().kind() == AdditionKind.OPTION && r.saving()
                .perYear() > 0));
    }

    @Test
    void aGivenPriceIsTakenAndOneForNothingIsSaid() {
        PartDemand plate = SmallShop.plate("x", 100, 60, 50, List.of(Contour.circle(new Point(50, 30), 27)));
        AdviceOptions options = new AdviceOptions(20, 10_000, Map.of("new-round-27", 12.5, "gold hammer", 3.0), true, true);
        Advice advice = Advisor.advise(SmallShop.job(List.of(new BookOrder("X-1", 10, List.of(plate))), SmallShop.tools(),
                options),
                Progress.SILENT);
        Recommendation round = advice.ranking().stream().filter(r -> r.addition().id().equals("new-round-27")).findFirst()
                .orElseThrow();
        assertEquals(12.5, round.addition().price().value());
        assertEquals(Price.Basis.GIVEN, round.addition().price().basis());
        assertTrue(advice.findings().stream().anyMatch(f -> f.reason() == AdviceReason.UNKNOWN_PRICE && f.message().contains(
                "gold hammer")));
    }

    @Test
    void theLimitOfWorkIsSaidWithTheLargestBoundLeft() {
        AdviceJob job = SmallShop.job(book(2), SmallShop.tools(), new AdviceOptions(5, 4, Map.of(), true, true));
        Advice advice = Advisor.advise(job, Progress.SILENT);
        assertTrue(advice.findings().stream().anyMatch(f -> f.reason() == AdviceReason.WORK_LIMIT));
    }

    @Test
    void cancelStopsAndAnEmptyBookIsAnError() {
        Progress cancelled = new Progress() {
            @Override
            public void at(String step, double share) {
                // nobody listens
            }

            @Override
            public boolean cancelled() {
                return true;
            }
        };
        AdviceJob job = SmallShop.job(book(2), SmallShop.tools(), SmallShop.options(5, true));
        assertThrows(CancelledException.class, () -> Advisor.advise(job, cancelled));
        Advice none = Advisor.advise(SmallShop.job(List.of(), SmallShop.tools(), SmallShop.options(5, true)), Progress.SILENT);
        assertTrue(none.findings().getFirst().isError());
    }

    @Test
    void everyReasonHasItsTextsInBothLanguages() {
        for (AdviceReason r : AdviceReason.values()) {
            punchwright.engine.finding.Finding f = punchwright.engine.finding.Finding.of(r, "x", 1.0, 2.0, 3.0);
            assertFalse(f.message(Locale.ENGLISH).isBlank(), r.name());
            assertFalse(f.message(Locale.GERMAN).isBlank(), r.name());
            assertTrue(r == AdviceReason.NOT_PROVEN || !f.message(Locale.ENGLISH).equals(f.message(Locale.GERMAN)), r.name());
        }
    }

    @Test
    void clustersAreMadeOfThePatternsFound() {
        List<Contour> holes = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            holes.add(Contour.circle(new Point(20 + 12 * i, 30), 6));
            holes.add(Contour.circle(new Point(20 + 12 * i, 42), 6));
        }
        AdviceJob job = SmallShop.job(List.of(new BookOrder("C", 20, List.of(SmallShop.plate("c", 100, 70, 200, holes)))),
                SmallShop
                .tools(), SmallShop.options(20, true));
        Book book = new Book(job, Progress.SILENT);
        List<Integer> punches = Additions.of(book, new Today(book).cost()).stream().filter(a -> a.kind() == AdditionKind.TOOL)
                .map(Addition::tool).filter(t -> t.shape() == ToolShape.CLUSTER).map(t -> t.cluster().size()).distinct()
                        .sorted().toList();
        assertTrue(punches.containsAll(List.of(2, 3, 4, 6, 12)), punches.toString());
    }
}
