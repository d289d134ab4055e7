// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

import org.junit.jupiter.api.Test;

import punchwright.engine.finding.Finding;
import punchwright.engine.finding.WayOut;
import punchwright.engine.finding.WayOut.Kind;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Point;

/** Ways out with the values that plane geometry and the rule of force give; each is taken and asked again. */
class FeatureWayOutTest {

    private static final Elsewhere ALONE = new Elsewhere(List.of(), List.of(Shop.STEEL));

    private static ToolingJob job(Parts part, double thicknessMm, List<Tool> tools) {
        ToolingJob j = Shop.job(part.build("A"), thicknessMm, tools);
        return new ToolingJob(j.features(), j.material(), thicknessMm, j.machine(), tools, List.of(), j.rules(), ALONE);
    }

    private static List<Finding> errors(ToolingJob job, ToolWishes wishes) {
        return ToolChoice.choose(job, ChoiceWeights.USUAL, wishes).findings().stream().filter(Finding::isError).toList();
    }

    private static Finding only(ToolingJob job) {
        List<Finding> errors = errors(job, ToolWishes.NONE);
        assertEquals(1, errors.size(), errors.toString());
        return errors.getFirst();
    }

    private static WayOut way(Finding f, Kind kind) {
        return f.waysOut().stream().filter(w -> w.kind() == kind).findFirst().orElseThrow(() -> new AssertionError(f.remedy()));
    }

    private static void works(ToolingJob job, int feature, WayOut way) {
        WayTaken start = WayTaken.start(job, null, feature, ToolWishes.NONE);
        assertFalse(start.made());
        assertTrue(start.with(way, ALONE).made(), way.toString());
    }

    /** Triangle of 30, 40 and 50 mm: edge 120 mm, 120 x 2 x 320 N = 76.8 kN, with 1.2 as reserve 92.16 kN, of 220 kN 41.9 %. */
    @Test
    void aSpecialToolOrRoundedCornersForAnAcuteCorner() {
        ToolingJob j = job(Parts.plate(200, 100).free(Contour.polygon(List.of(new Point(50, 30), new Point(90, 30),
                new Point(90, 60)))), 2, Shop.tools());
        Finding f = only(j);
        WayOut tool = way(f, Kind.TOOL);
        assertEquals("FREE_CONTOUR", tool.id());
        assertEquals(40, tool.value(), 1e-9);
        assertEquals(30, tool.values().get(0), 1e-9);
        assertEquals(0.4, tool.values().get(3), 1e-9);
        assertEquals(92.16, tool.values().get(4), 0.01);
        assertEquals(41.9, tool.values().get(5), 0.05);
        String said = "free contour 40 x 30 mm, die clearance 0.4 mm in all (92.2 kN, 42 % of what its place carries)";
        assertTrue(f.remedy().contains(said), f.remedy());
        assertTrue(f.remedy(Locale.GERMAN).contains("freie Kontur 40 x 30 mm, Schneidspalt insgesamt 0,4 mm (92,2 kN, 42 %"),
                f.remedy(Locale.GERMAN));
        WayOut radius = way(f, Kind.RADIUS);
        assertEquals(1.5, radius.value(), 1e-9, "the smallest round tool owned is 3 mm");
        works(j, 1, tool);
        works(j, 1, radius);
        assertFalse(WayTaken.start(j, null, 1, ToolWishes.NONE).with(WayOut.of(Kind.RADIUS, 1.4), ALONE).made());
    }

    /** A slot of 4 mm in the edge, the narrowest tool owned 5 mm: a tool of 4 mm at most. */
    @Test
    void aNarrowerToolForASlotInTheOutline() {
        Contour outline = Contour.polygon(List.of(new Point(0, 0), new Point(200, 0), new Point(200, 100), new Point(102, 100),
                new Point(102, 80), new Point(98, 80), new Point(98, 100), new Point(0, 100)));
        ToolingJob j = job(Parts.outline(outline), 2, List.of(Shop.rectangle(50, 5), Shop.rectangle(5, 5), Shop.round(10)));
        List<Finding> errors = errors(j, ToolWishes.NONE);
        assertFalse(errors.isEmpty());
        for (Finding f : errors) {
            WayOut tool = way(f, Kind.TOOL);
            double narrow = tool.values().get(0) > 0 ? tool.values().get(0) : tool.value();
            assertTrue(narrow <= 4 && narrow >= 2, f.remedy());
        }
        WayOut first = way(errors.getFirst(), Kind.TOOL);
        WayTaken then = WayTaken.start(j, null, 0, ToolWishes.NONE).with(first, ALONE);
        assertTrue(ToolChoice.choose(then.job()).complete(), first.toString());
    }

    /** A hole of 3 mm in 6 mm sheet, which wants 6 mm: larger with a tool for it, or thinner with one; as drawn not here. */
    @Test
    void aHoleTooSmallForTheSheetTakesTwoChanges() {
        ToolingJob j = job(Parts.plate(200, 100).round(100, 50, 3), 6, List.of(Shop.rectangle(50, 7)));
        Finding f = errors(j, ToolWishes.NONE).stream().filter(e -> e.reason() == ToolingReason.SMALL_OPENING).findFirst()
                .orElseThrow();
        WayOut larger = way(f, Kind.LARGER);
        assertEquals(6, larger.value(), 1e-9);
        assertEquals(Kind.TOOL, larger.and().getFirst().kind());
        assertEquals(6, larger.and().getFirst().value(), 1e-9);
        WayOut thinner = way(f, Kind.THINNER);
        assertEquals(3, thinner.value(), 1e-9);
        assertEquals(3, thinner.and().getFirst().value(), 1e-9);
        works(j, 1, larger);
        works(j, 1, thinner);
        assertTrue(f.remedy().contains("6 mm wide or more and with a new tool, round 6 mm"), f.remedy());
        String german = f.remedy(Locale.GERMAN);
        assertTrue(german.contains("mindestens 6 mm breit ist und mit einem neuen Werkzeug, rund 6 mm"), german);
        assertTrue(f.waysOut().stream().anyMatch(w -> w.kind() == Kind.OTHER_PROCESS), f.remedy());
    }

    /** Ten millimetres on a machine that takes eight, and no other. */
    @Test
    void aSheetThickerThanEveryMachineIsForAnotherProcess() {
        Finding f = only(job(Parts.plate(200, 100), 10, Shop.tools()));
        assertEquals(8, way(f, Kind.THINNER).value(), 1e-9);
        assertEquals(8, way(f, Kind.OTHER_PROCESS).value(), 1e-9);
        assertTrue(f.remedy().contains("take up to 8 mm") && f.remedy().contains("made outside"), f.remedy());
        assertTrue(f.remedy(Locale.GERMAN).contains("nehmen bis 8 mm"), f.remedy(Locale.GERMAN));
    }

    @Test
    void aForbiddenToolIsAllowedOrAnotherOneBought() {
        ToolingJob j = job(Parts.plate(200, 100).round(100, 50, 12), 2, List.of(Shop.round(12), Shop.rectangle(50, 5)));
        ToolWishes wishes = new ToolWishes(Set.of("R12.0"), Map.of());
        Finding f = errors(j, wishes).getFirst();
        assertEquals(ToolingReason.NEEDS_FORBIDDEN, f.reason());
        assertEquals("R12.0", way(f, Kind.ALLOW).id());
        assertTrue(errors(j, ToolWishes.NONE).isEmpty());
    }

    /** A ban is not the reason where the tool could not work anyway: 3 mm in 6 mm sheet. */
    @Test
    void aForbiddenToolThatIsTooSmallIsRefusedForItsSize() {
        ToolingJob j = job(Parts.plate(200, 100).round(100, 50, 3), 6, List.of(Shop.round(3), Shop.rectangle(50, 7)));
        assertEquals(ToolingReason.SMALL, errors(j, new ToolWishes(Set.of("R3.0"), Map.of())).getFirst().reason());
    }

    /** Slot at 30 degrees, a tool of its size, no place that turns: turn the part by 30 degrees, or a tool set at 30. */
    @Test
    void theTurnOfThePartIsTheSmallest() {
        Tool quarter = Shop.with(Shop.rectangle(30, 12), AngleFreedom.QUARTER, 0, 1);
        Tool slit = Shop.rectangle(50, 5);
        ToolingJob j = job(Parts.plate(200, 100).rectangle(100, 50, 30, 30, 12), 2, List.of(quarter, slit));
        WayOut turn = way(only(j), Kind.TURN_PART);
        assertEquals(-30, turn.value(), 1e-9);
        works(j, 1, turn);
    }

    /** Forty sorts of holes that nothing makes: 32 are looked at, the rest is told that it was not. */
    @Test
    void theWorkIsBoundedAndSaid() {
        Parts part = Parts.plate(900, 200);
        for (int i = 0; i < 40; i++) {
            part.form("EMBOSS", 30 + 40 * (i % 20), 50 + 60 * (i / 20), 5 + 0.25 * i);
        }
        List<Finding> none = new ArrayList<>(errors(job(part, 2, Shop.tools()), ToolWishes.NONE));
        assertEquals(40, none.size());
        assertEquals(32, none.stream().filter(f -> f.waysOut().stream().anyMatch(w -> w.kind() == Kind.TOOL)).count());
        assertTrue(none.getLast().remedy().contains("first 32"), none.getLast().remedy());
    }
}
