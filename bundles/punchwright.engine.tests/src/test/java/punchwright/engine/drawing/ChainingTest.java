// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;

import punchwright.engine.drawing.contour.ContourReason;
import punchwright.engine.finding.Finding;
import punchwright.engine.finding.Reason;

class ChainingTest {

    private static DrawingResult survey(String entities) throws DrawingException {
        return Dxf.survey(Dxf.mm() + Dxf.entities(entities));
    }

    private static List<Finding> of(DrawingResult r, Reason reason) {
        return r.findings().stream().filter(f -> f.reason() == reason).toList();
    }

    @Test
    void orderAndDirectionDoNotMatter() throws DrawingException {
        Random random = new Random(1);
        List<double[]> sides = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            double a = i * Math.PI / 6;
            double b = (i + 1) * Math.PI / 6;
            sides.add(new double[] {50 * Math.cos(a), 50 * Math.sin(a), 50 * Math.cos(b), 50 * Math.sin(b)});
        }
        for (int turn = 0; turn < 20; turn++) {
            Collections.shuffle(sides, random);
            StringBuilder text = new StringBuilder();
            for (double[] s : sides) {
                text.append(random.nextBoolean() ? Dxf.line(s[0], s[1], s[2], s[3]) : Dxf.line(s[2], s[3], s[0], s[1]));
            }
            DrawingResult r = survey(text.toString());
            assertEquals(1, r.loops().size());
            assertEquals(3 * 2500, r.areaMm2(), 1e-6); // regular dodecagon: 3 R^2
        }
    }

    @Test
    void aGapBelowTheToleranceClosesAndAWiderOneIsAnOpenOutline() throws DrawingException {
        String three = Dxf.line(200, 0, 200, 100) + Dxf.line(200, 100, 0, 100) + Dxf.line(0, 100, 0, 0) + Dxf.circle(100, 50, 10);
        DrawingResult closed = survey(three + Dxf.line(0.009, 0, 200, 0));
        assertEquals(2, closed.loops().size());
        assertEquals(1, of(closed, ContourReason.GAPS_CLOSED).size());
        Finding open = of(survey(three + Dxf.line(0.5, 0, 200, 0)), ContourReason.OPEN_OUTLINE).get(0);
        assertEquals(0.5, (Double) open.arguments().get(2), 1e-9);
        assertThrows(DrawingException.class, () -> Dxf.read(Dxf.mm() + Dxf.entities(three + Dxf.line(0.5, 0, 200, 0))));
    }

    @Test
    void duplicatesInAnyFormCountOnce() throws DrawingException {
        String poly = Dxf.tags("0 LWPOLYLINE|90 4|70 1|10 0|20 100|10 200|20 100|10 200|20 0|10 0|20 0");
        DrawingResult r = survey(Dxf.PLATE + Dxf.PLATE + poly + Dxf.circle(50, 50, 5)
                + Dxf.tags("0 ARC|10 50|20 50|40 5|50 0|51 180|0 ARC|10 50|20 50|40 5|50 180|51 0"));
        assertEquals(2, r.loops().size());
        assertEquals(600 + 10 * Math.PI, r.cutLengthMm(), 1e-9);
        assertEquals(1, of(r, ContourReason.DUPLICATES).size());
    }

    @Test
    void linesThatLieOnAnOutlineAreDropped() throws DrawingException {
        DrawingResult r = survey(Dxf.PLATE + Dxf.line(50, 0, 150, 0) + Dxf.line(200, 20, 200, 60));
        assertEquals(1, r.loops().size());
        assertEquals(0, r.openChains().size());
        assertEquals(2, of(r, ContourReason.OVERLAPS).get(0).arguments().get(0));
    }

    @Test
    void aLineAcrossDoesNotCutThePart() throws DrawingException {
        DrawingResult r = survey(Dxf.PLATE + Dxf.line(0, 0, 200, 100));
        assertEquals(20000, r.areaMm2(), 1e-9);
        assertEquals(1, r.shapes().size());
        assertTrue(!of(r, ContourReason.BRANCHING).isEmpty());
        assertEquals(1, r.openChains().size());
    }

    @Test
    void squaresThatShareACornerAreTwo() throws DrawingException {
        DrawingResult r = survey(Dxf.line(0, 0, 10, 0) + Dxf.line(10, 0, 10, 10) + Dxf.line(10, 10, 0, 10) + Dxf.line(0, 10, 0, 0)
                + Dxf.line(10, 10, 20, 10) + Dxf.line(20, 10, 20, 20) + Dxf.line(20, 20, 10, 20) + Dxf.line(10, 20, 10, 10));
        assertEquals(2, r.loops().size());
        assertEquals(200, r.areaMm2(), 1e-9);
    }

    @Test
    void endsOnTheMiddleOfALineAreJoinedWhereNothingElseCloses() throws DrawingException {
        // A U whose open end is closed by a longer line: both ends of the U lie inside that line.
        DrawingResult r = survey(Dxf.line(10, 0, 10, 50) + Dxf.line(10, 50, 60, 50) + Dxf.line(60, 50, 60, 0)
                + Dxf.line(0, 0, 80, 0));
        assertEquals(1, r.loops().size());
        assertEquals(2500, r.areaMm2(), 1e-9);
        assertEquals(1, of(r, ContourReason.SPLIT).size());
    }

    @Test
    void crossingsAndTouchingsHavePlaces() throws DrawingException {
        DrawingResult bow = survey(Dxf.tags("0 LWPOLYLINE|90 4|70 1|10 0|20 0|10 200|20 100|10 200|20 0|10 0|20 100"));
        Finding f = of(bow, ContourReason.SELF_CROSSING).get(0);
        assertEquals(100, f.place().x(), 1e-6);
        assertEquals(50, f.place().y(), 1e-6);
        DrawingResult holes = survey(Dxf.PLATE + Dxf.circle(90, 50, 10) + Dxf.circle(110, 50, 10) + Dxf.circle(0, 50, 5));
        assertEquals(100, of(holes, ContourReason.TOUCHING).get(0).place().x(), 1e-6);
        assertEquals(0, of(holes, ContourReason.CROSSING).get(0).place().x(), 1e-6);
    }

    @Test
    void nestingMakesPartsInsideHoles() throws DrawingException {
        DrawingResult r = survey(Dxf.circle(0, 0, 100) + Dxf.circle(0, 0, 80) + Dxf.circle(0, 0, 60) + Dxf.circle(0, 0, 40)
                + Dxf.circle(300, 0, 10));
        assertEquals(3, r.shapes().size());
        assertEquals(Math.PI * (10000 - 6400 + 3600 - 1600 + 100), r.areaMm2(), 1e-6);
        assertEquals(1, r.shapes().get(0).holes().size());
    }
}
