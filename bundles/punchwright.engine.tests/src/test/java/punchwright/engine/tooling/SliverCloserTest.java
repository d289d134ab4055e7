// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Pose;
import punchwright.engine.geometry.Shape;

/**
 * Regression: loose waste where shared cuts cross. Four parts 100 x 100 mm stand 5 mm apart; slits of 5 mm run over each corner
 * by 1.5 mm, so that 5 - 2 x 1.5 = 2 mm are left in the middle of the crossing.
 */
class SliverCloserTest {

    private static final Tool SLIT = Shop.rectangle(30, 5);
    private static final Envelope CROSSING = new Envelope(100, 105, 100, 105);

    private static List<Shape> parts(double radius) {
        List<Shape> parts = new ArrayList<>();
        for (double x : new double[] { 0, 105 }) {
            for (double y : new double[] { 0, 105 }) {
                Contour outer = radius > 0 ? Parts.rounded(100, 100, radius) : Contour.rectangle(0, 0, 100, 100);
                parts.add(new Shape(outer.moved(Pose.at(x, y, 0)), List.of()));
            }
        }
        return parts;
    }

    private static SliverCloser.Cut slit(int id, double x, double y, double angle) {
        return new SliverCloser.Cut(id, SLIT, new PartHit(new Point(x, y), angle, HitRole.SLIT));
    }

    /** The last hits towards the crossing, ends {@code over} past the corners. */
    private static List<SliverCloser.Cut> cuts(double over) {
        double low = 100 + over - 15;
        double high = 105 - over + 15;
        return List.of(slit(0, 102.5, low, 90), slit(1, 102.5, high, 90), slit(2, low, 102.5, 0), slit(3, high, 102.5, 0));
    }

    private static Geometry left(List<SliverCloser.Cut> cuts) {
        List<Geometry> areas = cuts.stream().map(c -> new Footprint(c.tool()).area(c.hit())).toList();
        return Areas.difference(Areas.FACTORY.toGeometry(CROSSING), Areas.union(areas));
    }

    private static List<SliverCloser.Cut> closed(double radius, List<Point> joints, double over, double least) {
        List<SliverCloser.Cut> cuts = cuts(over);
        List<SliverCloser.Cut> all = new ArrayList<>(cuts);
        all.addAll(new SliverCloser(parts(radius), joints, 0.25, cuts, least, 0.1).closing());
        return all;
    }

    @Test
    void theMiddleOfACrossingIsPunchedAway() {
        assertEquals(4, left(cuts(1.5)).getArea(), 1e-6, "2 x 2 mm are loose");
        List<SliverCloser.Cut> all = closed(0, List.of(), 1.5, 2.5);
        assertEquals(5, all.size(), "one hit more");
        assertEquals(0, left(all).getArea(), 1e-6);
        parts(0).forEach(p -> all.forEach(c -> assertEquals(0,
                Areas.of(p).intersection(new Footprint(c.tool()).area(c.hit())).getArea(), 1e-6, "enters no part")));
    }

    @Test
    void wasteAsWideAsTheRuleStays() {
        assertEquals(4, closed(0, List.of(), 1.5, 2).size());
    }

    @Test
    void cutsThatMeetLeaveNothingToDo() {
        assertEquals(4, closed(0, List.of(), 2.5, 2.5).size());
    }

    @Test
    void aSliverThatHangsOnAJointStays() {
        assertEquals(4, closed(0, List.of(new Point(101.6, 101.4)), 1.5, 2.5).size());
    }

    @Test
    void theStarBetweenRoundedCornersIsPunchedAway() {
        List<SliverCloser.Cut> all = closed(2, List.of(), 1.5, 2.5);
        assertTrue(all.size() > 4);
        assertEquals(0, left(all).getArea(), 1e-6);
    }
}
