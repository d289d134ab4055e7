// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

import punchwright.engine.nesting.check.LayoutCheck;

/** Validation: layouts against published or independently derived values. */
class NesterValidationTest {

    private static int pieces(Nesting nesting) {
        return nesting.layouts().stream().mapToInt(l -> l.runs() * l.placements().size()).sum();
    }

    /** Grid count by arithmetic: floor((L - 2e + g)/(l + g)) x floor((W - e - c + g)/(w + g)); derived, no source. */
    @Test
    @DisplayName("grid of one orientation: 9 x 5 = 45 pieces of 200 x 150 on 2000 x 1000, web 10, edge 10, clamp strip 80")
    void gridAsDrawn() {
        Nesting n = Nester.nest(Jobs.job(List.of(Jobs.part("A", 200, 150, 45, 10, 0.0)),
                List.of(Jobs.sheet("S", 2000, 1000, 40, 9)), 10, 80));
        assertEquals(1, n.layouts().size());
        assertEquals(1, n.layouts().get(0).runs());
        assertEquals(45, pieces(n));
        assertEquals(0.675, n.utilisation(), 1e-12);
    }

    @Test
    @DisplayName("grid turned: 12 x 4 = 48 pieces, utilisation 72.0 %")
    void gridTurned() {
        Nesting n = Nester.nest(Jobs.job(List.of(Jobs.part("A", 200, 150, 48, 10, 90.0)),
                List.of(Jobs.sheet("S", 2000, 1000, 40, 9)), 10, 80));
        assertEquals(1, n.layouts().size());
        assertEquals(0.72, n.utilisation(), 1e-12);
    }

    /** With both turns the better grid is 48; a mixed pattern may hold more but never less. */
    @Test
    void bothTurnsAreAtLeastTheBetterGrid() {
        Nesting n = Nester.nest(Jobs.job(List.of(Jobs.part("A", 200, 150, 48, 10, 0.0, 90.0)),
                List.of(Jobs.sheet("S", 2000, 1000, 40, 9)), 10, 80));
        assertEquals(1, n.layouts().size());
        assertTrue(LayoutCheck.of(Jobs.job(List.of(Jobs.part("A", 200, 150, 48, 10, 0.0, 90.0)),
                List.of(Jobs.sheet("S", 2000, 1000, 40, 9)), 10, 80), n).isEmpty());
    }

    /** One sheet more for one piece more: 45 fit as drawn, so 46 need two sheets, the second with one piece. */
    @Test
    void lastSheetHoldsTheRest() {
        Nesting n = Nester.nest(Jobs.job(List.of(Jobs.part("A", 200, 150, 91, 10, 0.0)),
                List.of(Jobs.sheet("S", 2000, 1000, 40, 9)), 10, 80));
        assertEquals(List.of(2, 1), n.layouts().stream().map(Layout::runs).toList());
        assertEquals(1, n.layouts().get(1).placements().size());
    }

    /**
     * Pieces of 3 x 2 in 7 x 5: the better grid holds 4, five by hand: two lying one above the other (3 x 4), two upright
     * beside them (4 x 3), one lying above those (3 x 2). By area at most 5; derived, no source.
     */
    @Test
    void mixedBlocksBeatEachGrid() {
        Nesting n = Nester.nest(Jobs.job(List.of(Jobs.part("A", 30, 20, 5, 0, 0.0, 90.0)),
                List.of(Jobs.sheet("S", 70, 50, 1, 9)), 0, 0));
        assertEquals(1, n.layouts().size());
        assertEquals(5, n.layouts().get(0).placements().size());
    }

    /** Pieces and area of problem C1 number 1 of Hopper and Turton, EJOR 128 (2000) 34-57: perfect packing of 20 x 20. */
    @Test
    @DisplayName("Hopper and Turton C1-1 packs into few units above its perfect height of 20")
    void hopperTurtonC11() {
        int[][] items = {{2, 12}, {7, 12}, {8, 6}, {3, 6}, {3, 5}, {5, 5}, {3, 12}, {3, 7}, {5, 7}, {2, 6}, {3, 2}, {4, 2},
            {3, 4}, {4, 4}, {9, 2}, {11, 2}};
        List<NestPart> parts = new ArrayList<>();
        double area = 0;
        for (int i = 0; i < items.length; i++) {
            parts.add(Jobs.part("P" + i, items[i][0], items[i][1], 1, 0, 0.0, 90.0));
            area += items[i][0] * items[i][1];
        }
        assertEquals(400, area);
        List<SheetOffer> offers = new ArrayList<>();
        for (int height = 20; height <= 26; height++) {
            offers.add(Jobs.sheet("H" + height, height, 20, height, 1));
        }
        Nesting n = Nester.nest(Jobs.job(parts, offers, 0, 0));
        assertEquals(400, n.boundMm2(), 1e-6);
        assertEquals(1, n.layouts().size());
        assertTrue(n.layouts().get(0).sheet().lengthMm() <= 21, "height " + n.layouts().get(0).sheet().lengthMm());
    }

    /** Cheapest cover of 10 pieces from sheets that hold 4 (price 5) and 3 (price 3.5): 4 + 3 + 3 = 12.0; by enumeration. */
    @Test
    void cheapestMixOfSheets() {
        Nesting n = Nester.nest(Jobs.job(List.of(Jobs.part("A", 100, 100, 10, 0, 0.0)),
                List.of(Jobs.sheet("four", 400, 100, 5, 9), Jobs.sheet("three", 300, 100, 3.5, 9)), 0, 0));
        double price = n.layouts().stream().mapToDouble(l -> l.runs() * l.sheet().price()).sum();
        assertEquals(12.0, price, 1e-9);
        assertEquals(10, pieces(n));
    }

    /** Longer sheets than a carriage travel are for the holding stage; only the longest sheet of the machine counts. */
    @Test
    void longSheetUpToTheMachine() {
        NestingJob job = Jobs.job(List.of(Jobs.part("A", 4000, 200, 2, 5, 0.0)),
                List.of(Jobs.sheet("L", 9000, 400, 100, 5), Jobs.sheet("XL", 10_500, 400, 1, 5)), 10, 80);
        Nesting n = Nester.nest(job);
        assertEquals("L", n.layouts().get(0).sheet().id());
        assertTrue(n.findings().stream().anyMatch(f -> f.reason() == NestingReason.SHEET_LONG));
        assertTrue(LayoutCheck.of(job, n).isEmpty());
    }
}
