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
}
