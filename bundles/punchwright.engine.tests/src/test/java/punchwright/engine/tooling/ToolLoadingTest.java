// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

import punchwright.engine.press.HeadKind;
import punchwright.engine.press.Machine;
import punchwright.engine.press.Place;

/** Regression: which tool stands where. */
class ToolLoadingTest {

    private static final Holder FOUR = new Holder("H4", "four-holder", 4, 25, 120_000, false, 90, 1);

    private static Machine turret(Place... places) {
        return Shop.machine(200_000, HeadKind.TURRET, List.of(places));
    }

    private static Place place(String id, double diameter, double force, boolean turns, boolean holder) {
        return new Place(id, diameter, force, turns, turns ? 0.02 : 0, holder);
    }

    private static UsedTool used(Tool tool, double force, Double... angles) {
        return new UsedTool(tool, List.of(angles), 10, force);
    }

    @Test
    void smallToolsLeaveLargePlacesFree() {
        Loading l = ToolLoading.load(turret(place("1", 90, 200_000, true, false), place("2", 30, 100_000, false, false)),
                List.of(used(Shop.round(10), 20_000, 0.0), used(Shop.rectangle(50, 5), 50_000, 0.0)), List.of());
        assertTrue(l.findings().isEmpty());
        assertEquals("1", l.uses().stream().filter(u -> u.tool().id().startsWith("Q")).findFirst().orElseThrow().place().id());
    }

    @Test
    void severalAnglesNeedATurningPlace() {
        Loading l = ToolLoading.load(turret(place("1", 90, 200_000, false, false), place("2", 90, 200_000, true, false)),
                List.of(used(Shop.rectangle(50, 5), 50_000, 0.0, 90.0, 33.0)), List.of());
        assertEquals(1, l.uses().size());
        assertTrue(l.uses().getFirst().turning());
        assertEquals("2", l.uses().getFirst().place().id());
    }

    @Test
    void withoutATurningPlaceTwoOfTheToolStandAtTwoAngles() {
        Machine m = turret(place("1", 90, 200_000, false, false), place("2", 90, 200_000, false, false));
        Tool slit = Shop.rectangle(50, 5);
        Loading two = ToolLoading.load(m, List.of(used(slit, 50_000, 0.0, 90.0, 270.0)), List.of());
        assertEquals(List.of(0.0, 90.0), two.uses().stream().map(ToolUse::setAngleDeg).sorted().toList());
        Loading one = ToolLoading.load(m, List.of(used(Shop.with(slit, AngleFreedom.QUARTER, 0, 1), 50_000, 0.0, 90.0)),
                List.of());
        assertEquals(ToolingReason.ANGLES, one.findings().getFirst().reason());
        Loading odd = ToolLoading.load(m, List.of(used(slit, 50_000, 33.0)), List.of());
        assertEquals(ToolingReason.ANGLE, odd.findings().getFirst().reason());
    }

    @Test
    void shortOfPlacesSmallToolsShareAHolder() {
        Machine m = turret(place("1", 100, 200_000, true, true), place("2", 100, 200_000, true, true));
        List<UsedTool> tools = List.of(used(Shop.round(5), 10_000, 0.0), used(Shop.round(8), 16_000, 0.0),
                used(Shop.round(10), 20_000, 0.0), used(Shop.rectangle(50, 5), 50_000, 0.0, 90.0));
        Loading l = ToolLoading.load(m, tools, List.of(FOUR));
        assertTrue(l.findings().isEmpty(), l.findings().toString());
        assertEquals(4, l.uses().size());
        assertEquals(3, l.uses().stream().filter(u -> u.holder() != null).count());
        assertEquals(List.of(1, 2, 3, 4), l.uses().stream().map(ToolUse::number).toList());
        Loading without = ToolLoading.load(m, tools, List.of());
        assertEquals(ToolingReason.NO_PLACE, without.findings().getFirst().reason());
    }

    @Test
    void onAMachineWithOneHeadTheRestIsSetByHand() {
        Machine m = Shop.machine(200_000, HeadKind.SINGLE_HEAD, List.of(place("1", 100, 200_000, true, false)));
        Loading l = ToolLoading.load(m, List.of(used(Shop.round(5), 10_000, 0.0), used(Shop.round(8), 16_000, 0.0)), List.of());
        assertEquals(ToolingReason.BY_HAND, l.findings().getFirst().reason());
        assertNotNull(l.uses().getFirst().place());
        assertNull(l.uses().get(1).place());
        assertFalse(l.findings().getFirst().isError());
    }

    @Test
    void forceIsHeldAgainstThePlaceWithReserve() {
        Machine m = turret(place("1", 100, 118_000, true, false));
        assertTrue(ToolLoading.load(m, List.of(used(Shop.round(30), 98_000, 0.0)), List.of()).findings().isEmpty());
        Loading l = ToolLoading.load(m, List.of(used(Shop.round(30), 119_200, 0.0)), List.of());
        assertEquals(ToolingReason.FORCE, l.findings().getFirst().reason());
        assertTrue(l.findings().getFirst().message().contains("143.0 kN"), l.findings().getFirst().message());
    }
}
