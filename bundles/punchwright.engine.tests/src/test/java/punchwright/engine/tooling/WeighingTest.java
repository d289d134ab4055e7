// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;

import org.junit.jupiter.api.Test;

import punchwright.engine.feature.FeatureSet;

/** Alternatives, reasons and wishes. */
class WeighingTest {

    private static final FeatureSet PART = Parts.plate(200, 120).round(40, 40, 10).round(80, 40, 20).rectangle(140, 60, 0, 30, 30)
            .build("W");

    private static ToolWeighing weigh(ToolWishes wishes) {
        return ToolChoice.weigh(Shop.job(PART, 2, Shop.tools()), ChoiceWeights.USUAL, wishes);
    }

    private static FeatureWays of(ToolWeighing w, int feature) {
        return w.ways().stream().filter(f -> f.features().getFirst().number() == feature).findFirst().orElseThrow();
    }

    private static List<String> tools(ToolWeighing w, int feature) {
        return w.operations().operations().stream().filter(o -> o.feature().number() == feature).map(o -> o.tool().id()).toList();
    }

    @Test
    void everyToolIsUsedOrHasATypedReason() {
        ToolWeighing w = weigh(ToolWishes.NONE);
        for (FeatureWays ways : w.ways()) {
            assertEquals(1, ways.alternatives().stream().filter(Alternative::chosen).count());
            Alternative chosen = ways.alternatives().stream().filter(Alternative::chosen).findFirst().orElseThrow();
            assertEquals(Shop.tools().size(), ways.passedOver().size() + chosen.tools().stream().map(Tool::id).distinct()
                    .count());
            ways.passedOver().forEach(f -> assertFalse(f.message().isBlank() || f.remedy().isBlank(), f.code()));
        }
    }

    @Test
    void theChoiceIsProvenBest() {
        ToolWeighing w = weigh(ToolWishes.NONE);
        assertEquals(w.costSeconds(), w.boundSeconds(), 1e-6 * w.costSeconds());
        assertTrue(w.costSeconds() > 0);
    }

    @Test
    void aForbiddenToolIsReplacedAtNoLessCost() {
        ToolWeighing free = weigh(ToolWishes.NONE);
        assertEquals(List.of("R10.0"), tools(free, 1));
        ToolWeighing without = weigh(new ToolWishes(Set.of("R10.0"), Map.of()));
        assertFalse(tools(without, 1).contains("R10.0"));
        assertTrue(without.costSeconds() >= free.costSeconds() - 1e-9);
        assertTrue(of(without, 1).passedOver().stream().anyMatch(f -> f.reason() == ToolingReason.FORBIDDEN));
    }

    @Test
    void aPinnedToolTakesPart() {
        ToolWeighing w = weigh(new ToolWishes(Set.of(), Map.of(2, "R8.0")));
        assertEquals(List.of("R8.0"), tools(w, 2));
        ToolWeighing vain = weigh(new ToolWishes(Set.of(), Map.of(1, "R30.0")));
        assertEquals(List.of("R10.0"), tools(vain, 1));
        assertTrue(vain.operations().findings().stream().anyMatch(f -> f.reason() == ToolingReason.PIN));
    }

    @Test
    void forceIsGivenInPerCentOfTheLimit() {
        Alternative a = of(weigh(ToolWishes.NONE), 1).alternatives().stream().filter(Alternative::chosen).findFirst()
                .orElseThrow();
        double expected = 100 * 1.2 * Math.PI * 10 * 2 * 320 / 220_000;
        assertEquals(expected, a.forcePercent(), 1e-6);
    }

    /** Two tools of one size: the one whose die fits is taken, though the other comes first and wears as much. */
    @Test
    void aFittingDieWins() {
        Tool wide = withDie(Shop.round(10), "A10", 0.8, 10);
        Tool fitting = withDie(Shop.round(10), "B10", 0.4, 10);
        java.util.List<Tool> tools = new java.util.ArrayList<>(List.of(wide, fitting));
        tools.addAll(Shop.tools().stream().filter(t -> !t.id().equals("R10.0")).toList());
        ToolWeighing w = ToolChoice.weigh(Shop.job(PART, 2, tools), ChoiceWeights.USUAL, ToolWishes.NONE);
        assertEquals(List.of("B10"), tools(w, 1));
    }

    /** The record does not say how many grinds a new tool had: the price is not laid on the few that are left. */
    @Test
    void aPartUsedToolIsNoDearerThanANewOne() {
        ToolLimits limits = new ToolLimits(Shop.job(PART, 2, List.of(withDie(Shop.round(10), "new", 0.4, 10),
                withDie(Shop.round(10), "old", 0.4, 1))), Set.of());
        assertEquals(limits.usable().get(0).wearPerHit(), limits.usable().get(1).wearPerHit(), 1e-12);
        assertEquals((200 + 10 * 6) / (11 * 60_000.0), limits.usable().get(1).wearPerHit(), 1e-12);
    }

    private static Tool withDie(Tool t, String id, double clearance, int grindsLeft) {
        return new Tool(id, id, t.shape(), t.lengthMm(), t.widthMm(), t.cornerRadiusMm(), t.freedom(), t.fixedAngleDeg(),
                List.of(clearance), t.shear(), t.shearHeightMm(), t.price(), grindsLeft, t.grindCost(), t.hitsPerGrind(),
                t.hitsSinceGrind(), t.onHand(), t.formHeightMm(), t.cluster(), t.freeContour());
    }
}
