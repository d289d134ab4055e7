// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.costing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import org.junit.jupiter.api.Test;

import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Shape;
import punchwright.engine.nesting.Margins;
import punchwright.engine.nesting.NestPart;
import punchwright.engine.nesting.Nester;
import punchwright.engine.nesting.Nesting;
import punchwright.engine.nesting.NestingCosts;
import punchwright.engine.nesting.NestingJob;
import punchwright.engine.nesting.Remnant;
import punchwright.engine.nesting.SearchLimits;
import punchwright.engine.nesting.SheetLimits;
import punchwright.engine.nesting.SheetOffer;

/** What remnants and scrap bring is one figure: in the choice of layouts and in the cost of the order. */
class LayoutCreditTest {

    private static final double KG_PER_MM2 = 2 * 7.85e-6;

    private static CostJob job(List<SheetRun> runs, double creditPercent, int pieces, double pieceKg) {
        CostJob like = CostFixture.job();
        ShopRates r = like.rates();
        ShopRates rates = new ShopRates(r.labourPerHour(), r.setUpPerHour(), r.programmingPerHour(), r.setUpBaseMinutes(),
                r.setUpMinutesPerTool(), r.programmingMinutes(), r.programmingLots(), r.firstPieceCheckMinutes(),
                r.consumablesPerHour(), creditPercent, 0, 0, 0, 0, 0, 0);
        SheetWork work = new SheetWork("DC01, 2 mm", "dc01", 0.3, 1, 0, runs, List.of());
        CostPart part = new CostPart("a", "Plate A", 0, pieces, pieceKg, 10_000, 10, Map.of(), 0, List.of());
        return new CostJob("Order 1", "EUR", Locale.ENGLISH, "", like.machine(), rates, List.of(work), List.of(part),
                List.of(new CostLine("l1", "Plate A", pieces, List.of(new CostLine.Need("a", 1)), List.of(), 0, List.of())));
    }

    /** On paper: 10 runs x 5 kg of 20 kg at 40, half of it: 50; 2 runs x 10 kg of 30 kg at 90, half: 30. */
    @Test
    void creditOnPaper() {
        CostSheet sheet = OrderCost.calculate(job(List.of(new SheetRun("st-1", "small", 40, 20, 60, 10, 5),
                new SheetRun("st-2", "large", 90, 30, 60, 2, 10)), 50, 10, 1));
        assertEquals(80, sheet.value("J1_remnant_credit"), 1e-9);
        assertEquals((200 + 60 - 70 - 10) * 0.3, sheet.value("J1_scrap_credit"), 1e-9);
    }

    @Test
    void sameFigureAsTheLayouts() {
        Shape shape = new Shape(Contour.rectangle(0, 0, 310, 190), List.of());
        NestingJob nesting = new NestingJob(List.of(new NestPart("a", shape, 58, List.of(0.0, 90.0), 8)),
                List.of(new SheetOffer("st-1", 2000, 1000, 44, 2, false), new SheetOffer("st-2", 2500, 1250, 75, 9, false)),
                new Margins(10, 80), new SheetLimits(4000, 2000, 200), KG_PER_MM2, new NestingCosts(0.3, 0.6, 500, 300, 4, 0),
                new SearchLimits(100_000, 1, false));
        Nesting n = Nester.nest(nesting);
        assertTrue(n.cost().remnants() > 0 && n.cost().scrap() > 0 && n.layouts().size() > 1, n.cost().toString());
        List<SheetRun> runs = new ArrayList<>();
        for (int i = 0; i < n.layouts().size(); i++) {
            int layout = i;
            SheetOffer s = n.layouts().get(i).sheet();
            double kept = n.remnants().stream().filter(r -> r.layout() == layout).mapToDouble(Remnant::areaMm2).sum();
            runs.add(new SheetRun(s.id(), s.id(), s.price(), s.areaMm2() * KG_PER_MM2, 60, n.layouts().get(i).runs(),
                    kept * KG_PER_MM2));
        }
        CostSheet sheet = OrderCost.calculate(job(runs, 60, 58, shape.areaMm2() * KG_PER_MM2));
        assertEquals(n.cost().remnants(), sheet.value("J1_remnant_credit"), 1e-9);
        assertEquals(n.cost().scrap(), sheet.value("J1_scrap_credit"), 1e-9);
        assertEquals(n.cost().material(), sheet.value("J1_sheet_cost"), 1e-9);
    }
}
