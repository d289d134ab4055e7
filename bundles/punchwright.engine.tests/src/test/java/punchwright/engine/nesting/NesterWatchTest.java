// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

import org.junit.jupiter.api.Test;

import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Pose;
import punchwright.engine.geometry.Shape;
import punchwright.engine.nesting.check.LayoutCheck;

/** Progress with the best so far, cancel that keeps it, and one sheet laid out anew around locked parts. */
class NesterWatchTest {

    private static final class Listener implements Watch {

        private final int cancelAfter;
        private final List<Nesting> told = new ArrayList<>();
        private final List<Double> shares = new ArrayList<>();

        Listener(int cancelAfter) {
            this.cancelAfter = cancelAfter;
        }

        @Override
        public void best(Nesting best, double share) {
            told.add(best);
            shares.add(share);
        }

        @Override
        public boolean cancelled() {
            return told.size() >= cancelAfter;
        }
    }

    /** An order for which the first try is not the best. */
    private static NestingJob order() {
        List<NestPart> parts = new ArrayList<>();
        int[][] sizes = {{310, 205}, {190, 140}, {95, 420}, {260, 260}, {510, 75}, {140, 330}};
        for (int i = 0; i < sizes.length; i++) {
            parts.add(Jobs.part("P" + i, sizes[i][0], sizes[i][1], 9, 8, 0.0, 90.0));
        }
        return Jobs.job(parts, List.of(Jobs.sheet("S", 1500, 800, 30, 99), Jobs.sheet("L", 2000, 1000, 47, 99)), 10, 60)
                .with(new SearchLimits(150_000, 1, false));
    }

    @Test
    void tellsTheBestSoFar() {
        Listener listener = new Listener(Integer.MAX_VALUE);
        Nesting n = Nester.nest(order(), listener);
        assertEquals(Nester.nest(order()), n, "listening changes nothing");
        assertTrue(listener.told.size() >= 2);
        for (int i = 0; i < listener.told.size(); i++) {
            assertEquals(List.of(), LayoutCheck.of(order(), listener.told.get(i)));
            assertTrue(listener.shares.get(i) >= 0 && listener.shares.get(i) <= 1);
            assertTrue(i == 0 || listener.told.get(i).cost().net() <= listener.told.get(i - 1).cost().net() + 1e-9);
        }
        assertTrue(n.cost().net() <= listener.told.getLast().cost().net() + 1e-9);
    }

    @Test
    void cancelKeepsTheBestSoFar() {
        for (int after : new int[] {0, 1, 2}) {
            Listener listener = new Listener(after);
            Nesting n = Nester.nest(order(), listener);
            assertEquals(List.of(), LayoutCheck.of(order(), n));
            assertTrue(n.findings().stream().anyMatch(f -> f.reason() == NestingReason.CANCELLED));
            if (after > 0) {
                assertTrue(n.cost().net() <= listener.told.get(after - 1).cost().net() + 1e-9);
            }
        }
        assertFalse(Nester.nest(order()).findings().stream().anyMatch(f -> f.reason() == NestingReason.CANCELLED));
    }

    @Test
    void cancelledBarsAndShapesAreValid() {
        for (int seed = 1; seed <= 12; seed++) {
            NestingJob job = Jobs.various(seed).with(new SearchLimits(40_000, seed, seed % 3 == 0));
            assertEquals(List.of(), LayoutCheck.of(job, Nester.nest(job, new Listener(seed % 4))), "seed " + seed);
        }
    }

    @Test
    void othersArePlacedAroundLockedParts() {
        NestingJob job = order();
        for (Layout layout : Nester.nest(job).layouts()) {
            Set<Integer> locked = Set.of(0, layout.placements().size() / 2, layout.placements().size() - 1);
            Layout anew = Nester.around(job, layout, locked, Watch.SILENT);
            assertEquals(List.of(), LayoutCheck.of(job, anew));
            locked.forEach(i -> assertTrue(anew.placements().contains(layout.placements().get(i)), "locked part moved"));
            assertTrue(anew.placements().size() <= layout.placements().size());
        }
    }

    /** A right triangle and its half turn make a rectangle (geometry): the second finds room only by its outline. */
    @Test
    void outlinesArePlacedAroundLockedOnes() {
        Shape triangle = new Shape(Contour.polygon(List.of(new Point(0, 0), new Point(200, 0), new Point(0, 100))), List.of());
        NestPart part = new NestPart("A", triangle, 4, List.of(0.0, 180.0), 2);
        NestingJob job = new NestingJob(List.of(part), List.of(Jobs.sheet("S", 210, 106, 10, 1)), 0, 0, 10_000, 3_000, 1_000,
                Jobs.STEEL_1_5_KG_PER_MM2, 400_000, 1, true);
        Placement stays = new Placement("A", Pose.at(0, 0, 0));
        Layout layout = new Layout(job.offers().get(0), List.of(stays, new Placement("A", Pose.at(0, 0, 180)),
                new Placement("A", Pose.at(50, 50, 0))), 1);
        Layout anew = Nester.around(job, layout, Set.of(0), Watch.SILENT);
        assertEquals(List.of(), LayoutCheck.of(job, anew));
        assertEquals(2, anew.placements().size());
        assertEquals(stays, anew.placements().get(0));
        Layout boxes = Nester.around(job.with(new SearchLimits(400_000, 1, false)), layout, Set.of(0), Watch.SILENT);
        assertEquals(1, boxes.placements().size());
    }
}
