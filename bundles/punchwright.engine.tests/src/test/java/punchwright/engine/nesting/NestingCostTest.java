// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

import punchwright.engine.nesting.check.LayoutCheck;

/** Validation: choice by total cost, wants, clamp strip and bars on orders worked out on paper, and one published case. */
class NestingCostTest {

    private static NestingJob job(List<NestPart> parts, List<SheetOffer> offers, NestingCosts costs) {
        return new NestingJob(parts, offers, new Margins(0, 0), new SheetLimits(10_000, 3_000, 1_000), 1e-5, costs,
                new SearchLimits(200_000, 1, false));
    }

    private static NestPart part(String id, double l, double w, int quantity, Want want, double value) {
        return new NestPart(id, Jobs.rectangle(l, w), quantity, List.of(0.0), 0, want, value);
    }

    private static Nesting nest(NestingJob job) {
        Nesting n = Nester.nest(job);
        assertEquals(List.of(), LayoutCheck.of(job, n));
        assertTrue(n.cost().total() >= n.boundCost() - 1e-9);
        return n;
    }

    private static int made(Nesting n, String id) {
        return n.layouts().stream().mapToInt(l -> l.runs()
                * (int) l.placements().stream().filter(p -> p.partId().equals(id)).count()).sum();
    }

    private static String sheet(Nesting n) {
        return n.layouts().get(0).sheet().id();
    }

    /**
     * Part of 400 x 1000. Small sheet of 1000 x 1000 at 50: rest of 600 x 1000 at 0.8 of 30 is 24, net 26. Large one of
     * 2000 x 1000 at 60: rest of 1600 x 1000 at 0.8 of 48 is 38.4, net 21.6: the dearer sheet is the cheaper one.
     */
    @Test
    void valueOfTheRemnantDecides() {
        List<NestPart> parts = List.of(part("A", 400, 1000, 1, Want.MUST, 0));
        List<SheetOffer> offers = List.of(Jobs.sheet("small", 1000, 1000, 50, 9), Jobs.sheet("large", 2000, 1000, 60, 9));
        assertEquals("small", sheet(nest(job(parts, offers, NestingCosts.SHEETS_ONLY))));
        Nesting n = nest(job(parts, offers, new NestingCosts(0, 0.8, 500, 300, 0, 0)));
        assertEquals("large", sheet(n));
        assertEquals(38.4, n.cost().remnants(), 1e-9);
        assertEquals(21.6, n.cost().total(), 1e-9);
        assertEquals(21.6, n.boundCost(), 1e-9);
        assertEquals(List.of(new Remnant(0, 400, 0, 1600, 1000, 38.4)), n.remnants());
    }

    /** The same order, several parts: A of 400 x 600 and B of 400 x 400 share the 400 at the end. */
    @Test
    void valueOfTheRemnantDecidesForSeveralParts() {
        List<NestPart> parts = List.of(part("A", 400, 600, 1, Want.MUST, 0), part("B", 400, 400, 1, Want.MUST, 0));
        Nesting n = nest(job(parts, List.of(Jobs.sheet("small", 1000, 1000, 50, 9), Jobs.sheet("large", 2000, 1000, 60, 9)),
                new NestingCosts(0, 0.8, 500, 300, 0, 0)));
        assertEquals("large", sheet(n));
        assertEquals(21.6, n.cost().total(), 1e-9);
    }

    /** Two small sheets at 20 or one large at 45: the small ones (40); with handling of 10 a sheet the large one (55, not 60). */
    @Test
    void handlingOfSheetsDecides() {
        List<NestPart> parts = List.of(part("A", 100, 100, 20, Want.MUST, 0));
        List<SheetOffer> offers = List.of(Jobs.sheet("small", 1000, 100, 20, 9), Jobs.sheet("large", 1000, 200, 45, 9));
        assertEquals("small", sheet(nest(job(parts, offers, new NestingCosts(0, 0, 300, 300, 0, 0)))));
        Nesting n = nest(job(parts, offers, new NestingCosts(0, 0, 300, 300, 10, 0.01)));
        assertEquals("large", sheet(n));
        assertEquals(10, n.cost().handling(), 1e-9);
        assertEquals(20 * 400 * 0.01, n.cost().machine(), 1e-9);
        assertEquals(55 + 80, n.cost().total(), 1e-9);
        assertEquals(55 + 80, n.boundCost(), 1e-9);
    }

    /** A sheet of 1000 x 1000 at 1e-5 kg/mm2 weighs 10 kg; parts of 0.5 m2 leave 5 kg, at 0.4 a kg 2. */
    @Test
    void scrapCounts() {
        Nesting n = nest(job(List.of(part("A", 500, 500, 2, Want.MUST, 0)), List.of(Jobs.sheet("S", 1000, 1000, 30, 9)),
                new NestingCosts(0.4, 0, 300, 300, 0, 0)));
        assertEquals(2, n.cost().scrap(), 1e-9);
        assertEquals(28, n.cost().total(), 1e-9);
    }

    /**
     * Ten pieces to a sheet at 10, 8 musts, up to 20 more. At 0.5 each only the 2 that fill the sheet pay; at 1.2 a second sheet
     * pays with 12 (20 - 14.4 = 5.6; 20 of them: 30 - 24 = 6); at 1.5 all do (30 - 30 = 0).
     */
    @Test
    void optionalPiecesAsLongAsTheyPay() {
        List<SheetOffer> offers = List.of(Jobs.sheet("S", 1000, 100, 10, 99));
        double[] values = {0.5, 1.2, 1.5};
        int[] expected = {2, 12, 20};
        for (int i = 0; i < values.length; i++) {
            Nesting n = nest(job(List.of(part("A", 100, 100, 8, Want.MUST, 0), part("B", 100, 100, 20, Want.MAY, values[i])),
                    offers, NestingCosts.SHEETS_ONLY));
            assertEquals(expected[i], made(n, "B"), "at " + values[i]);
            assertEquals(8, made(n, "A"));
            assertEquals(expected[i] * values[i], n.cost().optional(), 1e-9);
        }
    }

    /** Three parts leave room for 4 fillers on their sheet, no sheet is taken for more; none goes into a rest that is kept. */
    @Test
    void fillersOnlyIntoRoomThatIsLeft() {
        List<NestPart> parts = List.of(part("A", 200, 100, 3, Want.MUST, 0), part("F", 100, 100, 25, Want.FILLER, 0));
        List<SheetOffer> offers = List.of(Jobs.sheet("S", 1000, 100, 10, 99));
        Nesting n = nest(job(parts, offers, NestingCosts.SHEETS_ONLY));
        assertEquals(1, n.layouts().stream().mapToInt(Layout::runs).sum());
        assertEquals(4, made(n, "F"));
        Nesting kept = nest(job(parts, offers, new NestingCosts(0, 0.5, 300, 100, 0, 0)));
        assertEquals(0, made(kept, "F"));
        assertEquals(0.5 * 10 * 0.4, kept.cost().remnants(), 1e-9);
        Nesting dear = nest(job(List.of(parts.get(0), part("F", 100, 100, 25, Want.FILLER, 0.8)), offers,
                new NestingCosts(0, 0.5, 300, 100, 0, 0)));
        assertEquals(4, made(dear, "F"));
    }

    /** A part as long as the sheet lies in the clamp strip where hits alone are kept out, its upper cut above strip and reach. */
    @Test
    void partInTheClampStrip() {
        NestingJob plain = new NestingJob(List.of(part("long", 1000, 200, 2, Want.MUST, 0), part("B", 300, 200, 3, Want.MUST, 0)),
                List.of(Jobs.sheet("S", 1000, 500, 10, 9)), new Margins(10, 80), new SheetLimits(10_000, 3_000, 1_000), 1e-5,
                NestingCosts.SHEETS_ONLY, new SearchLimits(50_000, 1, false));
        assertTrue(Nester.nest(plain).findings().stream().anyMatch(f -> f.reason() == NestingReason.PART_TOO_LARGE));
        Nesting n = nest(plain.with(new Margins(10, 80, ClampZone.NO_HIT, 5)));
        assertEquals(2, made(n, "long"));
        assertEquals(3, made(n, "B"));
        assertEquals(2, n.layouts().stream().mapToInt(Layout::runs).sum());
        Nesting reach = Nester.nest(plain.with(new Margins(10, 80, ClampZone.NO_HIT, 121)));
        assertTrue(reach.findings().stream().anyMatch(f -> f.reason() == NestingReason.PART_TOO_LARGE), "201 above 200");
    }

    /** Wikipedia, "Cutting stock problem": rolls of 5600 mm, thirteen widths, optimum 73; here as bars with a web of 3. */
    @Test
    @DisplayName("published: 73 bars, met by the bounds on area and cost")
    void barsOfAPublishedCase() {
        int[] lengths = {1380, 1520, 1560, 1710, 1820, 1880, 1930, 2000, 2050, 2100, 2140, 2150, 2200};
        int[] demand = {22, 25, 12, 14, 18, 18, 20, 10, 12, 14, 16, 18, 20};
        List<NestPart> parts = new ArrayList<>();
        for (int i = 0; i < lengths.length; i++) {
            parts.add(new NestPart("P" + i, Jobs.rectangle(lengths[i] - 3, 50), demand[i], List.of(0.0, 180.0), 3));
        }
        NestingJob job = new NestingJob(parts, List.of(new SheetOffer("B", 5617, 50, 12.5, 100, false, true)),
                new Margins(10, 80), new SheetLimits(10_000, 3_000, 1_000), 1e-5, NestingCosts.SHEETS_ONLY,
                new SearchLimits(2_000_000, 1, false));
        Nesting n = nest(job);
        assertEquals(73, n.layouts().stream().mapToInt(Layout::runs).sum());
        assertEquals(73 * 12.5, n.boundCost(), 1e-6);
        assertEquals(0, n.costGap(), 1e-9);
        assertEquals(0, n.areaGap(), 1e-9);
    }

    /** A remnant at 3 that holds the only part, beside sheets at 10: the remnant; at 11 it stays on the shelf. */
    @Test
    void remnantsWhereCheaperInTotal() {
        List<NestPart> parts = List.of(part("A", 200, 100, 1, Want.MUST, 0));
        SheetOffer sheet = Jobs.sheet("S", 1000, 100, 10, 9);
        assertEquals("R", sheet(nest(job(parts, List.of(sheet, new SheetOffer("R", 300, 100, 3, 1, true)),
                NestingCosts.SHEETS_ONLY))));
        assertEquals("S", sheet(nest(job(parts, List.of(sheet, new SheetOffer("R", 300, 100, 11, 1, true)),
                NestingCosts.SHEETS_ONLY))));
    }
}
