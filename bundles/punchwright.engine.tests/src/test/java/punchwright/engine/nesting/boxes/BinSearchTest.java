// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting.boxes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Validation: bins against cases of known optimum; every packing is checked pair by pair. */
class BinSearchTest {

    /** Cuts bins of 100 x 60 at random into boxes: the optimum is the number of bins, by area. */
    private static BoxSet cut(int bins, SplittableRandom r, boolean turn) {
        List<int[]> boxes = new ArrayList<>();
        for (int b = 0; b < bins; b++) {
            split(100, 60, 3, r, boxes);
        }
        return BoxSet.of(boxes.stream().mapToInt(x -> x[0]).toArray(), boxes.stream().mapToInt(x -> x[1]).toArray(), turn);
    }

    private static void split(int l, int w, int depth, SplittableRandom r, List<int[]> out) {
        if (depth == 0 || l < 8 || w < 8) {
            out.add(new int[] {l, w});
        } else if (r.nextBoolean()) {
            int at = r.nextInt(4, l - 3);
            split(at, w, depth - 1, r, out);
            split(l - at, w, depth - 1, r, out);
        } else {
            int at = r.nextInt(4, w - 3);
            split(l, at, depth - 1, r, out);
            split(l, w - at, depth - 1, r, out);
        }
    }

    @Test
    @DisplayName("cut bins: at most one bin above the optimum, valid, never below the bound")
    void cutBins() {
        int above = 0;
        for (int seed = 1; seed <= 20; seed++) {
            SplittableRandom r = new SplittableRandom(seed);
            BoxSet boxes = cut(5, r, seed % 2 == 0);
            assertTrue(BinBound.of(boxes, 100, 60) == 5, "bound by area");
            List<Bin> bins = BinSearch.pack(boxes, 100, 60, 5, new Work(400_000), 1);
            check(boxes, bins, 100, 60);
            above += bins.size() - 5;
        }
        assertTrue(above <= 20, above + " bins above the optimum in 20 cases");
    }

    /** Six boxes of 51 x 51 in bins of 100 x 100: no two share a bin, so six bins, which the area alone (2) does not show. */
    @Test
    void boundSeesBoxesThatNeverShareABin() {
        int[] side = {51, 51, 51, 51, 51, 51};
        assertEquals(6, BinBound.of(BoxSet.of(side, side, false), 100, 100));
        assertEquals(6, BinSearch.pack(BoxSet.of(side, side, false), 100, 100, 6, new Work(1000), 1).size());
    }

    @Test
    void boundNeverExceedsAPacking() {
        for (int seed = 1; seed <= 200; seed++) {
            SplittableRandom r = new SplittableRandom(seed);
            int n = r.nextInt(1, 25);
            int[] l = r.ints(n, 1, 101).toArray();
            int[] w = r.ints(n, 1, 101).toArray();
            BoxSet boxes = BoxSet.of(l, w, seed % 3 == 0);
            int bound = BinBound.of(boxes, 100, 100);
            List<Bin> bins = BinSearch.pack(boxes, 100, 100, 1, new Work(20_000), seed);
            check(boxes, bins, 100, 100);
            assertTrue(bound <= bins.size(), "seed " + seed + ": bound " + bound + " bins " + bins.size());
        }
    }

    @Test
    void boxThatFitsNoBinIsRefused() {
        IllegalArgumentException e = assertThrows(IllegalArgumentException.class,
                () -> BinSearch.pack(BoxSet.of(new int[] {5, 11}, new int[] {5, 3}, false), 10, 10, 1, new Work(10), 1));
        assertTrue(e.getMessage().contains("box 1 of 11 x 3"), e.getMessage());
    }

    static void check(BoxSet boxes, List<Bin> bins, int length, int width) {
        boolean[] seen = new boolean[boxes.size()];
        for (Bin bin : bins) {
            for (int i = 0; i < bin.size(); i++) {
                assertTrue(!seen[bin.box(i)], "box twice");
                seen[bin.box(i)] = true;
                int l = boxes.lengths()[bin.box(i)][bin.turn(i)];
                int w = boxes.widths()[bin.box(i)][bin.turn(i)];
                assertTrue(bin.x(i) >= 0 && bin.y(i) >= 0 && bin.x(i) + l <= length && bin.y(i) + w <= width, "outside");
                for (int j = 0; j < i; j++) {
                    int lj = boxes.lengths()[bin.box(j)][bin.turn(j)];
                    int wj = boxes.widths()[bin.box(j)][bin.turn(j)];
                    boolean apart = bin.x(i) + l <= bin.x(j) || bin.x(j) + lj <= bin.x(i) || bin.y(i) + w <= bin.y(j)
                            || bin.y(j) + wj <= bin.y(i);
                    assertTrue(apart, "overlap");
                }
            }
        }
        for (boolean s : seen) {
            assertTrue(s, "box missing");
        }
    }
}
