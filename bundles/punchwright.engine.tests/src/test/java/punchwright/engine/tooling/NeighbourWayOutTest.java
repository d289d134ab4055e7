// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.junit.jupiter.api.Test;

import punchwright.engine.finding.Finding;
import punchwright.engine.finding.Reason;
import punchwright.engine.finding.WayOut;
import punchwright.engine.finding.WayOut.Kind;
import punchwright.engine.press.PressReason;

/** Neighbours too near: how far to move, how thin, or drawn as one. Distances by plane geometry, least webs as the rule says. */
class NeighbourWayOutTest {

    /** The finding of the reason about feature 1. */
    private static Finding first(Parts part, double thicknessMm, Reason reason, Tool... more) {
        List<Tool> tools = new ArrayList<>(Shop.tools());
        tools.addAll(List.of(more));
        ToolingJob j = Shop.job(part.build("A"), thicknessMm, tools);
        ToolingJob asked = new ToolingJob(j.features(), j.material(), thicknessMm, j.machine(), tools, List.of(), j.rules(),
                new Elsewhere(List.of(), List.of(Shop.STEEL)));
        return ToolChoice.choose(asked).findings().stream().filter(f -> f.reason() == reason).findFirst().orElseThrow();
    }

    private static boolean gone(Parts part, double thicknessMm, Reason reason, Tool... more) {
        List<Tool> tools = new ArrayList<>(Shop.tools());
        tools.addAll(List.of(more));
        return ToolChoice.choose(Shop.job(part.build("A"), thicknessMm, tools)).findings().stream()
                .noneMatch(f -> f.reason() == reason);
    }

    private static WayOut way(Finding f, Kind kind) {
        return f.waysOut().stream().filter(w -> w.kind() == kind).findFirst().orElseThrow(() -> new AssertionError(f.remedy()));
    }

    /** Centres 10.8 mm apart, diameter 10: web 0.8; 2 mm sheet wants 2 mm: 1.2 mm farther; no sheet wants less than 1. */
    @Test
    void twoHolesTooNear() {
        Finding f = first(Parts.plate(200, 100).round(60, 50, 10).round(70.8, 50, 10), 2, PressReason.WEB);
        WayOut apart = way(f, Kind.APART);
        assertEquals(1.2, apart.value(), 0.011);
        assertEquals(0.8, apart.values().get(0), 0.005);
        assertEquals(2, apart.values().get(1), 1e-9);
        assertTrue(f.remedy().contains("farther from round 10 mm (2)"), f.remedy());
        assertTrue(f.remedy(Locale.GERMAN).contains("weiter weg von round 10 mm (2)"), f.remedy(Locale.GERMAN));
        assertTrue(f.waysOut().stream().noneMatch(w -> w.kind() == Kind.THINNER), f.remedy());
        assertTrue(gone(Parts.plate(200, 100).round(60 - apart.value(), 50, 10).round(70.8, 50, 10), 2, PressReason.WEB));
        assertFalse(gone(Parts.plate(200, 100).round(60 - apart.value() + 0.03, 50, 10).round(70.8, 50, 10), 2, PressReason.WEB));
    }

    /** Web 1.5 in 2 mm: 0.5 mm farther, or sheet of at most 1.5 mm. */
    @Test
    void theEdgeOfThePartTooNear() {
        Finding f = first(Parts.plate(200, 100).round(60, 6.5, 10), 2, PressReason.WEB);
        assertEquals(0.5, way(f, Kind.APART).value(), 0.011);
        assertEquals(1.5, way(f, Kind.THINNER).value(), 0.011);
        assertTrue(f.remedy().contains("from the edge of the part"), f.remedy());
        assertTrue(f.remedy(Locale.GERMAN).contains("von der Kante des Teils"), f.remedy(Locale.GERMAN));
        assertTrue(gone(Parts.plate(200, 100).round(60, 7, 10), 2, PressReason.WEB));
        assertTrue(gone(Parts.plate(200, 100).round(60, 6.5, 10), way(f, Kind.THINNER).value(), PressReason.WEB));
    }

    /** Squares of 30 mm that share a side: 2 mm farther, or drawn as one rectangle, which the square tool makes in two hits. */
    @Test
    void openingsThatTouchAreMovedOrDrawnAsOne() {
        Finding f = first(Parts.plate(200, 100).rectangle(100, 50, 0, 30, 30).rectangle(130, 50, 0, 30, 30), 2,
                ToolingReason.NO_WEB);
        assertEquals(2, way(f, Kind.APART).value(), 0.011);
        assertEquals("square 30 mm (2)", way(f, Kind.JOINED).name());
        assertTrue(ToolChoice.choose(Shop.job(Parts.plate(200, 100).rectangle(115, 50, 0, 60, 30).build("A"), 2, Shop.tools()))
                .complete());
        assertTrue(gone(Parts.plate(200, 100).rectangle(98, 50, 0, 30, 30).rectangle(130, 50, 0, 30, 30), 2,
                ToolingReason.NO_WEB));
    }

    /** A hole between two others cannot move: nothing but thinner sheet is told. */
    @Test
    void aHoleThatHasNoRoomIsNotMoved() {
        Finding f = first(Parts.plate(200, 100).round(60, 50, 10).round(71.5, 50, 10).round(48.3, 50, 10), 2, PressReason.WEB);
        assertTrue(f.waysOut().stream().noneMatch(w -> w.kind() == Kind.APART), f.remedy());
        assertEquals(1.5, way(f, Kind.THINNER).value(), 0.011);
    }

    /** Form of 12 mm, hole of 6 mm, centres 12 apart: 3 mm between them; 3 t = 6 mm wanted: 3 mm farther, or 1 mm sheet. */
    @Test
    void aFormTooNearToAHole() {
        Tool emboss = Shop.tool("F", ToolShape.EMBOSS, 12, 12, 0);
        Finding f = first(Parts.plate(200, 100).round(62, 50, 6).form("EMBOSS", 50, 50, 12), 2, PressReason.FORM_NEAR, emboss);
        assertEquals(3, way(f, Kind.APART).value(), 0.02);
        assertEquals(1, way(f, Kind.THINNER).value(), 0.011);
        assertTrue(gone(Parts.plate(200, 100).round(62, 50, 6).form("EMBOSS", 50 - way(f, Kind.APART).value(), 50, 12), 2,
                PressReason.FORM_NEAR, emboss));
        assertFalse(gone(Parts.plate(200, 100).round(62, 50, 6).form("EMBOSS", 50 - way(f, Kind.APART).value() + 0.05, 50, 12), 2,
                PressReason.FORM_NEAR, emboss));
    }

    /** Of many holes too near the first eight get their ways out, the others are told that none was looked for. */
    @Test
    void theWorkIsBounded() {
        Parts part = Parts.plate(300, 100);
        for (int i = 0; i < 20; i++) {
            part.round(20 + 10.5 * i, 50, 10);
        }
        ToolingJob j = Shop.job(part.build("A"), 2, Shop.tools());
        List<Finding> webs = ToolChoice.choose(new ToolingJob(j.features(), j.material(), 2, j.machine(), j.tools(), List.of(), j
                .rules(), new Elsewhere(List.of(), List.of(Shop.STEEL)))).findings().stream()
                .filter(f -> f.reason() == PressReason.WEB).toList();
        assertEquals(20, webs.size());
        assertEquals(12, webs.stream().filter(f -> f.waysOut().stream().anyMatch(w -> w.kind() == Kind.NOT_ASKED)).count());
        assertTrue(webs.getLast().remedy().contains("first 8"), webs.getLast().remedy());
    }
}
