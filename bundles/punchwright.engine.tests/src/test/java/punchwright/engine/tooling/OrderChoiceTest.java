// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

import org.junit.jupiter.api.Test;

import punchwright.engine.feature.FeatureSet;
import punchwright.engine.finding.Finding;
import punchwright.engine.press.HeadKind;
import punchwright.engine.press.Machine;
import punchwright.engine.press.Place;

/** The choice for an order on one machine: places, standing tools and shared set-ups decide with. */
class OrderChoiceTest {

    private static final Readiness TEN_SHEETS = new Readiness(List.of(), 120, 10);

    private static Machine turret(int places, boolean turns) {
        List<Place> all = new ArrayList<>();
        for (int i = 1; i <= places; i++) {
            all.add(new Place("" + i, 105, 200_000, turns, 0.02, true));
        }
        return Shop.machine(220_000, HeadKind.TURRET, all);
    }

    private static OrderPart part(FeatureSet features, Machine machine, List<Holder> holders, int pieces) {
        return new OrderPart(new ToolingJob(features, Shop.STEEL, 2, machine, Shop.tools(), holders, ToolingRules.USUAL),
                ToolWishes.NONE, pieces, 0);
    }

    private static List<OrderPart> order(Machine machine, List<Holder> holders) {
        return List.of(part(Parts.plate(200, 120).round(40, 40, 10).round(80, 40, 20).build("A"), machine, holders, 40),
                part(Parts.plate(160, 100).round(40, 40, 12).rectangle(100, 50, 0, 30, 30).build("B"), machine, holders, 25),
                part(Parts.plate(180, 90).round(40, 40, 8).round(120, 40, 30).build("C"), machine, holders, 10));
    }

    private static Loading load(List<OrderPart> order, OrderSelection s, Readiness readiness) {
        Map<String, List<Operation>> byTool = new LinkedHashMap<>();
        s.parts().forEach(list -> list.operations().forEach(
                op -> byTool.computeIfAbsent(op.tool().id(), id -> new ArrayList<>()).add(op)));
        List<UsedTool> used = byTool.values().stream().map(ops -> {
            TreeSet<Double> angles = new TreeSet<>();
            ops.forEach(op -> op.hits().forEach(h -> angles.add(h.angleDeg())));
            return new UsedTool(ops.getFirst().tool(), List.copyOf(angles), 1, ops.getFirst().forceN());
        }).toList();
        ToolingJob job = order.getFirst().job();
        return ToolLoading.load(job.machine(), used, job.holders(), job.rules().forceReserve(), readiness);
    }

    private static long tools(OrderSelection s) {
        return s.parts().stream().flatMap(l -> l.operations().stream()).map(o -> o.tool().id()).distinct().count();
    }

    @Test
    void withRoomForAllEveryHoleIsMadeInOneHit() {
        OrderSelection s = OrderChoice.choose(order(turret(16, true), List.of()), TEN_SHEETS, ChoiceWeights.USUAL);
        assertTrue(s.proven());
        s.parts().forEach(l -> assertTrue(l.complete(), l.findings().toString()));
        assertTrue(load(order(turret(16, true), List.of()), s, TEN_SHEETS).findings().stream().noneMatch(Finding::isError));
    }

    /** Alone each part would take its own tools, seven in all; on three places they must share. */
    @Test
    void aChoiceThatCannotBeLoadedIsNotMade() {
        for (int places = 3; places <= 6; places++) {
            List<OrderPart> order = order(turret(places, true), List.of());
            OrderSelection s = OrderChoice.choose(order, TEN_SHEETS, ChoiceWeights.USUAL);
            assertTrue(s.proven(), places + " places");
            assertTrue(tools(s) <= places, tools(s) + " tools on " + places + " places");
            s.parts().forEach(l -> assertTrue(l.complete(), l.findings().toString()));
            assertTrue(load(order, s, TEN_SHEETS).findings().stream().noneMatch(Finding::isError));
        }
    }

    @Test
    void fewerPlacesNeverCostLess() {
        double before = 0;
        for (int places = 9; places >= 3; places--) {
            double cost = OrderChoice.choose(order(turret(places, true), List.of()), TEN_SHEETS, ChoiceWeights.USUAL)
                    .costSeconds();
            assertTrue(cost >= before - 1e-6 * before - 0.01, places + " places: " + cost + " after " + before);
            before = cost;
        }
    }

    @Test
    void aHolderMakesRoom() {
        Holder six = new Holder("H6", "six", 6, 20, 60_000, true, 100, 1);
        double without = OrderChoice.choose(order(turret(3, true), List.of()), TEN_SHEETS, ChoiceWeights.USUAL).costSeconds();
        List<OrderPart> order = order(turret(3, true), List.of(six));
        OrderSelection with = OrderChoice.choose(order, TEN_SHEETS, ChoiceWeights.USUAL);
        assertTrue(with.costSeconds() < without, with.costSeconds() + " with, " + without + " without");
        Loading l = load(order, with, TEN_SHEETS);
        assertTrue(l.findings().stream().noneMatch(Finding::isError));
        assertTrue(l.uses().stream().anyMatch(u -> u.holder() != null));
    }

    @Test
    void aStandingToolSavesMakingItReady() {
        List<OrderPart> order = order(turret(16, true), List.of());
        OrderSelection cold = OrderChoice.choose(order, TEN_SHEETS, ChoiceWeights.USUAL);
        String used = cold.parts().getFirst().operations().getFirst().tool().id();
        Readiness warm = new Readiness(List.of(new Readiness.Standing("5", used, null)), 120, 10);
        OrderSelection s = OrderChoice.choose(order, warm, ChoiceWeights.USUAL);
        assertEquals(cold.costSeconds() - 120, s.costSeconds(), 0.05);
        assertEquals("5", load(order, s, warm).uses().stream().filter(u -> u.tool().id().equals(used)).findFirst().orElseThrow()
                .place().id());
    }

    @Test
    void withoutAnyWayTheFindingsSayWhatIsMissing() {
        List<OrderPart> order = order(turret(1, true), List.of());
        OrderSelection s = OrderChoice.choose(order, TEN_SHEETS, ChoiceWeights.USUAL);
        assertFalse(Double.isFinite(s.costSeconds()));
        assertTrue(load(order, s, TEN_SHEETS).findings().stream().anyMatch(f -> f.reason() == ToolingReason.NO_PLACE));
    }
}
