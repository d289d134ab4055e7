// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.layouts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;

import punchwright.engine.geometry.Bounds;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Shape;
import punchwright.engine.nesting.NestPart;
import punchwright.engine.nesting.NestingCosts;
import punchwright.engine.nesting.NestingJob;
import punchwright.engine.nesting.SheetOffer;
import punchwright.engine.nesting.Watch;
import punchwright.engine.nesting.check.LayoutReason;

/**
 * One sheet of 1000 x 500 mm with rectangles, web 5, margin 10, clamp strip 60. Every expected place is counted by hand from
 * these.
 */
class ArrangedSheetTest {

    private static final double SAME = 1e-9;
    private static final SheetOffer SHEET = new SheetOffer("s", 1000, 500, 100, 1, false);
    private static final NestPart LONG = part("long", 200, 100, 10);
    private static final NestPart SMALL = part("small", 50, 50, 30);

    private static NestPart part(String id, double length, double width, int quantity) {
        return new NestPart(id, new Shape(Contour.rectangle(0, 0, length, width), List.of()), quantity, List.of(0.0, 90.0), 5);
    }

    private static NestingJob job() {
        return new NestingJob(List.of(LONG, SMALL), List.of(SHEET), 10, 60, 4000, 1500, 500, 1e-5, 100_000, 1)
                .with(new NestingCosts(0, 0.5, 300, 300, 0, 0));
    }

    private static ArrangedSheet sheet(Piece... pieces) {
        return new ArrangedSheet(job(), SHEET, 2, List.of(pieces));
    }

    private static Piece at(String part, double x, double y) {
        return new Piece(part, x, y, 0, false);
    }

    private static List<LayoutReason> reasons(ArrangedSheet s) {
        return s.problems().stream().map(PieceProblem::reason).toList();
    }

    @Test
    void aPieceSnapsToMarginsAndStripAndAWebBesideItsNeighbour() {
        ArrangedSheet one = sheet(at("long", 10, 60), at("long", 400, 300));
        Piece corner = one.snapped(0, 12, 57, 8).pieces().get(0);
        assertEquals(10, corner.xMm(), SAME);
        assertEquals(60, corner.yMm(), SAME);
        Piece beside = one.snapped(1, 217, 64, 8).pieces().get(1);
        assertEquals(215, beside.xMm(), SAME, "10 + 200 + web 5");
        assertEquals(60, beside.yMm(), SAME);
        Piece far = one.snapped(1, 793, 386, 8).pieces().get(1);
        assertEquals(790, far.xMm(), SAME, "1000 - margin 10 - 200");
        assertEquals(390, far.yMm(), SAME, "500 - margin 10 - 100");
        Piece free = one.snapped(1, 500, 250, 8).pieces().get(1);
        assertEquals(500, free.xMm(), SAME, "nothing is near");
        assertEquals(250, free.yMm(), SAME);
    }

    @Test
    void aPushGoesToTheNextStop() {
        ArrangedSheet two = sheet(at("long", 10, 60), at("long", 400, 60));
        assertEquals(215, two.pushed(1, -1, 0).pieces().get(1).xMm(), SAME);
        assertEquals(790, two.pushed(1, 1, 0).pieces().get(1).xMm(), SAME);
        assertEquals(390, two.pushed(1, 0, 1).pieces().get(1).yMm(), SAME);
        assertSame(two, two.pushed(0, -1, 0), "it lies at the margin already");
    }

    @Test
    void theCheckNamesThePiecesByNumber() {
        assertEquals(List.of(), reasons(sheet(at("long", 10, 60), at("long", 215, 60))));
        ArrangedSheet near = sheet(at("long", 10, 60), at("small", 400, 300), at("long", 214, 60));
        assertEquals(List.of(LayoutReason.WEB), reasons(near));
        assertEquals(List.of(1, 3), near.problems().get(0).pieces());
        assertEquals(List.of(), near.problemsOf(1));
        assertEquals(List.of(LayoutReason.WEB), near.problemsOf(2).stream().map(PieceProblem::reason).toList());
        assertEquals(List.of(LayoutReason.OVERLAP), reasons(sheet(at("long", 10, 60), at("long", 100, 100))));
        assertEquals(List.of(LayoutReason.CLAMP_ZONE), reasons(sheet(at("long", 10, 59))));
        assertEquals(List.of(LayoutReason.EDGE), reasons(sheet(at("long", 9, 60))));
        assertEquals(List.of(LayoutReason.OUTSIDE_SHEET), reasons(sheet(at("long", 801, 60))));
        assertEquals(List.of(LayoutReason.UNKNOWN_PART), reasons(sheet(at("gone", 100, 100))));
    }

    @Test
    void turningGoesThroughTheAllowedAnglesAboutTheMiddle() {
        ArrangedSheet turned = sheet(at("long", 100, 100)).turned(0, 1);
        assertEquals(90, turned.pieces().get(0).angleDeg(), SAME);
        Bounds box = turned.box(turned.pieces().get(0));
        assertEquals(150, box.minX(), SAME, "middle 200, half of 100");
        assertEquals(250, box.maxY(), SAME, "middle 150, half of 200");
        assertEquals(100, turned.turned(0, 1).pieces().get(0).xMm(), SAME);
        assertEquals(0, turned.turned(0, -1).pieces().get(0).angleDeg(), SAME);
    }

    @Test
    void lockedPiecesStayWhereTheyAreAndTheOthersGoAroundThem() {
        ArrangedSheet mess = sheet(at("small", 700, 300), at("long", 300, 200), at("long", 310, 210), at("long", 500, 220))
                .locked(1, true);
        assertFalse(mess.problems().isEmpty());
        ArrangedSheet nested = mess.aroundLocked(Watch.SILENT);
        assertEquals(List.of(), reasons(nested));
        assertEquals(new Piece("long", 300, 200, 0, true), nested.pieces().get(0));
        assertEquals(List.of("long", "long", "long", "small"), nested.pieces().stream().map(Piece::partId).sorted().toList());
        assertSame(nested, nested.aroundLocked(Watch.SILENT), "what cannot be bettered stays");
    }

    @Test
    void nothingIsLostWhereTheOthersFindNoRoom() {
        Piece[] pieces = IntStream.range(0, 30).mapToObj(i -> at("long", 100 + i, 100)).toArray(Piece[]::new);
        ArrangedSheet full = sheet(pieces);
        assertSame(full, full.aroundLocked(Watch.SILENT), "at most 4 x 4 of 205 x 105 lie on 985 x 435");
    }

    @Test
    void fillingAddsWhatFindsRoomAndLeavesTheRest() {
        ArrangedSheet one = sheet(at("long", 300, 200));
        ArrangedSheet filled = one.filled(List.of("small", "small", "long"), Watch.SILENT);
        assertEquals(4, filled.pieces().size());
        assertEquals(one.pieces().get(0), filled.pieces().get(0));
        assertEquals(List.of(), reasons(filled));
        ArrangedSheet more = one.added("small");
        assertEquals(2, more.pieces().size());
        assertEquals(List.of(), reasons(more));
        assertEquals(1, more.without(Set.of(0)).pieces().size());
    }

    @Test
    void figuresAreThoseOfTheSheet() {
        ArrangedSheet s = sheet(at("long", 10, 60), at("long", 215, 60));
        assertEquals(2 * 200 * 100 / (1000.0 * 500), s.figures().utilisation(), SAME);
        assertEquals(200, s.figures().cost().material(), SAME, "two runs of 100");
        double rest = s.figures().remnants().stream().mapToDouble(r -> r.areaMm2()).sum();
        assertEquals(rest / (1000 * 500) * 100 * 0.5 * 2, s.figures().cost().remnants(), 1e-6, "half the price of their area");
        assertTrue(rest >= 580 * 500 - 1e-3, "the far end from 415 + web 5 on is worth keeping");
    }
}
