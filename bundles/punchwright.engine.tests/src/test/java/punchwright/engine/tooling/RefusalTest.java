// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import punchwright.engine.finding.Finding;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Point;
import punchwright.engine.press.HeadKind;
import punchwright.engine.press.Place;

/** Refusals are typed, carry their values and a way out. */
class RefusalTest {

    private static Finding only(ToolingJob job) {
        List<Finding> errors = ToolChoice.choose(job).findings().stream().filter(Finding::isError).toList();
        assertEquals(1, errors.size(), errors.stream().map(f -> f.subject() + ": " + f.message()).toList().toString());
        assertFalse(errors.getFirst().remedy().isEmpty());
        return errors.getFirst();
    }

    private static ToolingJob job(List<Tool> tools, double t, double placeForce) {
        ToolingJob j = Shop.job(Parts.plate(200, 100).round(100, 50, 10).build("A"), t, tools);
        return new ToolingJob(j.features(), j.material(), t, Shop.machine(250_000, HeadKind.TURRET,
                List.of(new Place("3", 100, placeForce, true, 0.02, false))), tools, List.of(), j.rules());
    }

    @Test
    void forceOfThePlace() {
        Finding f = only(job(List.of(Shop.round(10), Shop.rectangle(10, 4)), 4, 45_000));
        assertEquals(ToolingReason.FORCE, f.reason());
        assertTrue(f.subject().contains("round 10"), f.subject());
        assertTrue(f.message().contains("48.3 kN") && f.message().contains("place 3") && f.message().contains("45.0 kN"),
                f.message());
    }

    @Test
    void holeTooSmallForTheSheet() {
        ToolingJob j = Shop.job(Parts.plate(200, 100).round(100, 50, 3).build("A"), 5, Shop.tools());
        assertEquals(ToolingReason.SMALL, only(j).reason());
    }

    @Test
    void noToolSmallEnoughForTheRadius() {
        ToolingJob j = Shop.job(Parts.plate(200, 100).round(100, 50, 6.5).build("A"), 2,
                List.of(Shop.round(8), Shop.round(20), Shop.rectangle(50, 5)));
        Finding f = only(j);
        assertEquals(ToolingReason.INSIDE_RADIUS, f.reason());
        assertTrue(f.message().contains("3.25") && f.message().contains("6.5") && f.message().contains("8"), f.message());
    }

    @Test
    void openingSmallerThanAnyToolMayBe() {
        assertEquals(ToolingReason.SMALL_OPENING, only(Shop.job(Parts.plate(200, 100).round(100, 50, 2.4).build("A"), 3,
                Shop.tools())).reason());
    }

    @Test
    void acuteCornerOfAnOpening() {
        Contour wedge = Contour.polygon(List.of(new Point(50, 50), new Point(90, 50), new Point(90, 70)));
        assertEquals(ToolingReason.ACUTE_CORNER, only(Shop.job(Parts.plate(200, 100).free(wedge).build("A"), 2, Shop.tools()))
                .reason());
    }

    /** A notch of atan(10 / 80) to either side ends in 14.25 degrees: both of its edges say so, whichever way round. */
    @Test
    void acuteCornerOfANotch() {
        Contour notched = Contour.polygon(List.of(new Point(0, 0), new Point(300, 0), new Point(300, 200), new Point(160, 200),
                new Point(150, 120), new Point(140, 200), new Point(0, 200)));
        List<Finding> refused = ToolChoice.choose(Shop.job(Parts.outline(notched).build("A"), 2, Shop.tools())).findings().stream()
                .filter(Finding::isError).toList();
        assertFalse(refused.isEmpty());
        refused.forEach(f -> assertEquals(ToolingReason.ACUTE_CORNER, f.reason(), f.message()));
        refused.forEach(f -> assertTrue(f.message().contains("corner of 14 degrees at (150, 120)"), f.message()));
    }

    @Test
    void slotNarrowerThanAnyRectangle() {
        assertEquals(ToolingReason.SHORT_EDGE, only(Shop.job(Parts.plate(200, 100).rectangle(100, 50, 0, 40, 2.5).build("A"), 1,
                List.of(Shop.rectangle(50, 5), Shop.rectangle(20, 3)))).reason());
    }

    @Test
    void openingsThatTouch() {
        assertEquals(ToolingReason.NO_WEB, ToolChoice.choose(Shop.job(Parts.plate(200, 100).rectangle(100, 50, 0, 30, 30)
                .rectangle(130, 50, 0, 30, 30).build("A"), 2, Shop.tools())).findings().stream().filter(Finding::isError)
                        .findFirst()
                .orElseThrow().reason());
    }

    @Test
    void sheetTooThickForTheMachine() {
        assertEquals(ToolingReason.THICKNESS, only(Shop.job(Parts.plate(200, 100).build("A"), 10, Shop.tools())).reason());
    }

    @Test
    void angleThatCannotBeSet() {
        Tool quarter = Shop.with(Shop.rectangle(30, 12), AngleFreedom.QUARTER, 0, 1);
        Tool slit = Shop.rectangle(50, 5);
        ToolingJob j = Shop.job(Parts.plate(200, 100).rectangle(100, 50, 30, 30, 12).build("A"), 2, List.of(quarter, slit));
        assertEquals(ToolingReason.ANGLE, only(new ToolingJob(j.features(), j.material(), 2, Shop.press(), List.of(quarter, slit),
                List.of(), j.rules())).reason());
    }

    /** A form that a drawing marks has no name; it is refused with its place and not passed over. */
    @Test
    void formThatTheDrawingDoesNotName() {
        ToolingJob j = Shop.job(Parts.plate(200, 100).form("", 50, 50, 9).build("A"), 2, Shop.tools());
        assertEquals(ToolingReason.FORM_UNNAMED, only(j).reason());
    }

    @Test
    void formWithoutTool() {
        ToolingJob j = Shop.job(Parts.plate(200, 100).form("COUNTERSINK", 50, 50, 9).build("A"), 2, Shop.tools());
        assertEquals(ToolingReason.NO_FORM_TOOL, only(j).reason());
    }

    @ParameterizedTest
    @EnumSource(ToolingReason.class)
    void everyReasonHasTextsInBothLanguages(ToolingReason reason) {
        Object[] values = { 1.5, 2.5, 3.5, 4.5, 5.5, 6.5 };
        for (Locale locale : List.of(Locale.ENGLISH, Locale.GERMAN)) {
            Finding f = Finding.of(reason, "x", values);
            assertFalse(f.message(locale).isBlank(), reason + " " + locale);
            assertFalse(f.remedy(locale).isBlank(), reason + " " + locale);
            assertFalse(f.message(locale).contains("{"), f.message(locale));
        }
        assertFalse(Finding.of(reason, "x", values).message(Locale.ENGLISH)
                .equals(Finding.of(reason, "x", values).message(Locale.GERMAN)), reason.code());
    }
}
