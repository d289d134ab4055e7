// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;

import org.junit.jupiter.api.Test;

import punchwright.engine.finding.Finding;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Pose;
import punchwright.engine.geometry.Shape;
import punchwright.engine.nesting.ClampZone;
import punchwright.engine.nesting.Layout;
import punchwright.engine.nesting.Margins;
import punchwright.engine.nesting.NestPart;
import punchwright.engine.nesting.Nesting;
import punchwright.engine.nesting.NestingCost;
import punchwright.engine.nesting.NestingCosts;
import punchwright.engine.nesting.NestingJob;
import punchwright.engine.nesting.Placement;
import punchwright.engine.nesting.Remnant;
import punchwright.engine.nesting.SearchLimits;
import punchwright.engine.nesting.SheetLimits;
import punchwright.engine.nesting.SheetOffer;

/** The check must see each kind of damage, or its silence elsewhere means nothing; places are set by hand. */
class LayoutCheckTest {

    private static final SheetOffer SHEET = new SheetOffer("S", 1000, 500, 10, 2, false);
    private static final SheetOffer BAR = new SheetOffer("B", 1000, 100, 5, 9, false, true);

    private static NestPart part(String id, double l, double w, int quantity) {
        return new NestPart(id, new Shape(Contour.rectangle(0, 0, l, w), List.of()), quantity, List.of(0.0, 90.0), 8);
    }

    private static NestingJob job(Margins margins) {
        return new NestingJob(List.of(part("A", 200, 100, 2), part("long", 1000, 150, 1), part("slim", 100, 30, 2)),
                List.of(SHEET, BAR), margins, new SheetLimits(2000, 600, 100), 1e-5, NestingCosts.SHEETS_ONLY,
                new SearchLimits(1000, 1, false));
    }

    private static Placement at(String part, double x, double y, double angle) {
        return new Placement(part, Pose.at(x, y, angle));
    }

    private static List<LayoutReason> on(SheetOffer sheet, Placement... placements) {
        return on(new Margins(10, 80), sheet, placements);
    }

    private static List<LayoutReason> on(Margins margins, SheetOffer sheet, Placement... placements) {
        List<Finding> findings = LayoutCheck.of(job(margins), new Layout(sheet, List.of(placements), 1));
        findings.forEach(f -> assertFalse(f.message().isEmpty() || f.remedy().isEmpty() || f.message().contains("{"),
                f.message()));
        return findings.stream().map(f -> (LayoutReason) f.reason()).toList();
    }

    @Test
    void placesOnASheet() {
        assertEquals(List.of(), on(SHEET, at("A", 10, 80, 0), at("A", 218, 80, 0)));
        assertEquals(List.of(LayoutReason.WEB), on(SHEET, at("A", 10, 80, 0), at("A", 217.9, 80, 0)));
        assertEquals(List.of(LayoutReason.OVERLAP), on(SHEET, at("A", 10, 80, 0), at("A", 100, 120, 0)));
        assertEquals(List.of(LayoutReason.OVERLAP), on(SHEET, at("A", 10, 80, 0), at("slim", 50, 100, 0)),
                "one inside the other");
        assertEquals(List.of(LayoutReason.EDGE), on(SHEET, at("A", 9.9, 80, 0)));
        assertEquals(List.of(LayoutReason.EDGE), on(SHEET, at("A", 10, 391, 0)));
        assertEquals(List.of(LayoutReason.OUTSIDE_SHEET), on(SHEET, at("A", 801, 80, 0)));
        assertEquals(List.of(LayoutReason.CLAMP_ZONE), on(SHEET, at("A", 10, 79, 0)));
        assertEquals(List.of(LayoutReason.ANGLE), on(SHEET, at("A", 500, 200, 45)));
        assertEquals(List.of(LayoutReason.ANGLE), on(SHEET, new Placement("A", new Pose(500, 300, 0, true))));
        assertEquals(List.of(LayoutReason.UNKNOWN_PART), on(SHEET, at("X", 10, 80, 0)));
    }

    @Test
    void clampStripWithoutHits() {
        Margins noHit = new Margins(10, 80, ClampZone.NO_HIT, 5);
        assertEquals(List.of(), on(noHit, SHEET, at("long", 0, 0, 0)));
        assertEquals(List.of(LayoutReason.CLAMP_ZONE), on(new Margins(10, 80, ClampZone.NO_HIT, 71), SHEET, at("long", 0, 0, 0)));
        assertTrue(on(noHit, SHEET, at("long", 0, 20, 0)).contains(LayoutReason.CLAMP_ZONE));
        assertTrue(on(noHit, SHEET, at("A", 0, 0, 0)).contains(LayoutReason.CLAMP_ZONE), "its right edge is cut in the strip");
        assertTrue(on(SHEET, at("long", 0, 0, 0)).contains(LayoutReason.CLAMP_ZONE), "no part at all may lie there");
    }

    @Test
    void bars() {
        assertEquals(List.of(), on(BAR, at("slim", 10, 0, 0), at("slim", 118, 0, 0)));
        assertEquals(List.of(LayoutReason.BAR), on(BAR, at("slim", 10, 0, 0), at("slim", 60, 60, 0)));
        assertEquals(List.of(LayoutReason.EDGE), on(BAR, at("slim", 9, 0, 0)));
    }

    private static Nesting nesting(List<Layout> layouts, Remnant... remnants) {
        return new Nesting(layouts, List.of(remnants), 0, NestingCost.NONE, 0, 0, List.of());
    }

    private static List<LayoutReason> whole(Nesting nesting) {
        return LayoutCheck.of(job(new Margins(10, 80, ClampZone.NO_HIT, 5)), nesting).stream().map(f -> (LayoutReason) f.reason())
                .toList();
    }

    @Test
    void countsStockAndRemnants() {
        List<Placement> all = new ArrayList<>(List.of(at("long", 0, 0, 0), at("A", 10, 158, 0), at("A", 218, 158, 0),
                at("slim", 10, 266, 0), at("slim", 118, 266, 0)));
        Layout good = new Layout(SHEET, all, 1);
        assertEquals(List.of(), whole(nesting(List.of(good), new Remnant(0, 426, 158, 574, 342, 0))));
        assertEquals(List.of(LayoutReason.REMNANT), whole(nesting(List.of(good), new Remnant(0, 425, 158, 575, 342, 0))));
        assertEquals(List.of(LayoutReason.REMNANT), whole(nesting(List.of(good), new Remnant(0, 426, 158, 299, 342, 0))));
        assertEquals(List.of(LayoutReason.COUNT), whole(nesting(List.of(new Layout(SHEET, all.subList(0, 4), 1)))));
        assertTrue(whole(nesting(List.of(new Layout(SHEET, all, 3)))).contains(LayoutReason.STOCK));
        SheetOffer other = new SheetOffer("Z", 2500, 500, 10, 2, false);
        assertTrue(whole(nesting(List.of(new Layout(other, all, 1)))).containsAll(List.of(LayoutReason.STOCK,
                LayoutReason.MACHINE)));
        assertTrue(whole(nesting(List.of(good, new Layout(SHEET, List.of(), 1)))).contains(LayoutReason.EMPTY));
    }

    @Test
    void everyReasonHasTextsInBothLanguages() {
        for (Locale locale : List.of(Locale.ENGLISH, Locale.GERMAN)) {
            ResourceBundle texts = ResourceBundle.getBundle("punchwright.engine.nesting.check.findings", locale);
            Arrays.stream(LayoutReason.values()).forEach(r -> assertTrue(texts.containsKey(r.code() + ".message")
                    && texts.containsKey(r.code() + ".remedy"), r.code()));
        }
    }
}
