// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

import org.junit.jupiter.api.Test;

class ContourTidyTest {

    private static Contour split(Contour c, int pieces, int turn) {
        List<Segment> all = new ArrayList<>();
        for (Segment s : c.segments()) {
            for (int i = 0; i < pieces; i++) {
                double from = (double) i / pieces;
                double to = (double) (i + 1) / pieces;
                all.add(s instanceof Arc a ? new Arc(a.center(), a.radiusMm(), a.startRad() + from * a.sweepRad(),
                        a.sweepRad() / pieces) : new Line(s.pointAt(from), s.pointAt(to)));
            }
        }
        Collections.rotate(all, turn);
        return new Contour(all);
    }

    @Test
    void piecesOfOneEdgeBecomeOneSegmentWhereverTheContourBegins() {
        Contour c = Openings.rectangle(50, 30, 5);
        for (int turn = 0; turn < 40; turn++) {
            Contour tidy = ContourTidy.tidy(split(c, 5, turn), 0.01);
            assertEquals(8, tidy.segments().size());
            assertEquals(c.areaMm2(), tidy.areaMm2(), 1e-9);
        }
    }

    @Test
    void arcsOfOneCircleBecomeAFullCircleOfTheSameDirection() {
        Contour c = split(Contour.circle(new Point(1, 2), 10), 4, 1).reversed();
        Contour tidy = ContourTidy.tidy(c, 0.01);
        assertEquals(1, tidy.segments().size());
        assertEquals(c.signedAreaMm2(), tidy.signedAreaMm2(), 1e-9);
    }

    @Test
    void aSpikeIsNotJoinedAway() {
        List<Point> corners = List.of(new Point(0, 0), new Point(10, 0), new Point(5, 0.001), new Point(10, 0.002),
                new Point(10, 10), new Point(0, 10));
        assertTrue(ContourTidy.tidy(Contour.polygon(corners), 0.01).segments().size() >= 5);
    }
}
