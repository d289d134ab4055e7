// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

/** Life, grinds and cost of a hit: arithmetic by hand, common practice named as such, and a life played hit by hit. */
class WearTest {

    @Test
    @Validates(of = ToolLife.class, formulas = { "costPerHit", "hitsLeft" },
            source = "arithmetic: (180 + 10 x 6) / (11 x 60 000)")
    @Validates(of = RegrindPlan.class, formulas = { "grinds", "hitsInAll" },
            source = "arithmetic: reserve 3.0, 0.2 a grind: 15 grinds, 1 600 000 hits at 100 000; price 180, 12 a grind: "
                    + "0.000225 a hit")
    @Validates(of = RegrindPlan.class, formulas = { "leastDieGrinds", "mostDieGrinds" },
            source = "trade-magazine article on tool grinding: 12 grinds of the punch, 4 to 6 of the die")
    @Validates(of = PunchLife.class, formulas = { "leastHits", "mostHits", "middleHits", "factor" },
            source = "common practice, no source: stainless 20 000 to 60 000, 40 000 oiled and 20 000 dry")
    void byHand() {
        assertEquals(240 / 660_000.0, ToolLife.costPerHit(180, 0, 10, 6, 60_000), 1e-15);
        assertEquals(-500, ToolLife.hitsLeft(50_000, 0.5, 25_500), 1e-9);
        assertEquals(15, RegrindPlan.grinds(3.0, 0.2));
        assertEquals(1_600_000, RegrindPlan.hitsInAll(100_000, 15), 1e-6);
        assertEquals(0.000225, ToolLife.costPerHit(180, 0, 15, 12, 100_000), 1e-12);
        assertEquals(4, RegrindPlan.leastDieGrinds(12));
        assertEquals(6, RegrindPlan.mostDieGrinds(12));
        assertEquals(20_000, PunchLife.leastHits(MaterialGroup.STAINLESS_STEEL));
        assertEquals(60_000, PunchLife.mostHits(MaterialGroup.STAINLESS_STEEL));
        assertEquals(40_000, PunchLife.middleHits(MaterialGroup.STAINLESS_STEEL));
        assertEquals(20_000, PunchLife.middleHits(MaterialGroup.STAINLESS_STEEL) * PunchLife.factor(2, true, false), 1e-9);
        assertEquals(List.of(40_000.0, 140_000.0, 240_000.0), RegrindPlan.due(100_000, 60_000, 2));
        assertEquals(0, RegrindPlan.due(100_000, 160_000, 0).getFirst());
    }

    /** A tool used up hit by hit in steps: ground whenever due, thrown away when nothing is left to grind. */
    @Test
    @Sweeps(of = RegrindPlan.class, formulas = { "grinds", "hitsInAll", "leastDieGrinds", "mostDieGrinds" })
    @Sweeps(of = ToolLife.class, formulas = { "costPerHit", "hitsLeft" })
    void aLifePlayedThroughAgrees() {
        Draw.many(71, 200, d -> {
            double perGrind = d.whole(10, 30) / 100.0;
            double reserve = d.whole(0, 400) / 100.0;
            double hits = 1000 * d.whole(5, 200);
            double price = d.between(40, 900);
            double grindCost = d.between(2, 40);
            double spent = price;
            double made = hits;
            int left = (int) Math.round(reserve * 100);
            int grinds = 0;
            while (left >= (int) Math.round(perGrind * 100)) {
                left -= (int) Math.round(perGrind * 100);
                spent += grindCost;
                made += hits;
                grinds++;
            }
            assertEquals(grinds, RegrindPlan.grinds(reserve, perGrind));
            assertEquals(made, RegrindPlan.hitsInAll(hits, grinds), 1e-6);
            assertEquals(spent / made, ToolLife.costPerHit(price, 0, grinds, grindCost, hits), 1e-12);
            assertEquals(made, RegrindPlan.due(hits, 0, grinds).getLast(), 1e-6);
            assertEquals(hits - 300, ToolLife.hitsLeft(hits, 1, 300), 1e-9);
            assertTrue(RegrindPlan.leastDieGrinds(grinds) <= RegrindPlan.mostDieGrinds(grinds)
                    && RegrindPlan.mostDieGrinds(grinds) <= grinds);
        });
    }

    @Test
    @Sweeps(of = PunchLife.class, formulas = { "leastHits", "mostHits", "middleHits", "factor" })
    void harderThickerDrierNeverLastsLonger() {
        List<MaterialGroup> soft = List.of(MaterialGroup.ALUMINIUM, MaterialGroup.MILD_STEEL, MaterialGroup.STAINLESS_STEEL);
        for (int i = 1; i < soft.size(); i++) {
            assertTrue(PunchLife.mostHits(soft.get(i)) < PunchLife.mostHits(soft.get(i - 1)));
        }
        Draw.many(72, 200, d -> {
            MaterialGroup g = d.of(MaterialGroup.values());
            assertTrue(PunchLife.leastHits(g) < PunchLife.middleHits(g) && PunchLife.middleHits(g) < PunchLife.mostHits(g));
            double t = d.between(0.4, 8);
            assertTrue(PunchLife.factor(t, false, false) >= PunchLife.factor(t + 0.3, false, false));
            assertTrue(PunchLife.factor(t, true, false) < PunchLife.factor(t, false, false));
            assertTrue(PunchLife.factor(t, true, true) < PunchLife.factor(t, true, false) && PunchLife.factor(t, true, true) > 0);
        });
    }
}
