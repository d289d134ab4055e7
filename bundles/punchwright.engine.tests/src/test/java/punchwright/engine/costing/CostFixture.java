// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.costing;

import java.util.List;
import java.util.Locale;
import java.util.Map;

import punchwright.engine.costing.MachineRateInputs.InterestBasis;

/** A small order whose every figure can be worked out on paper: two parts share ten sheets, one of them is bent. */
final class CostFixture {

    private CostFixture() {
    }

    static CostJob job() {
        return job(Locale.ENGLISH, "", 0);
    }

    static CostJob job(Locale locale, String code, double scrapRatePercent) {
        MachineRateInputs machine = new MachineRateInputs("Press", 0, 0, 0, 10, 2000, 100, 0, InterestBasis.PURCHASE, 0, 0, 0,
                0, 0,
                0, 60, 50);
        ShopRates rates = new ShopRates(36, 0, 48, 10, 2, 15, 1, 5, 2, 100, scrapRatePercent, 10, 50, 8, 2, 10);
        SheetWork work = new SheetWork("DC01, 2 mm", "dc01", 0.5, 1, 5,
                List.of(new SheetRun("st-1", "1000 x 1250 x 2", 40, 20, 360, 10, 0)),
                List.of(new ToolPrice("rd-5", "Round 5", 100, 0, 4, 15, 10_000)));
        CostPart a = new CostPart("a", "Plate A", 0, 100, 1.0, 10_000, 10, Map.of("rd-5", 5), 15, List.of());
        CostPart b = new CostPart("b", "Bracket B", 0, 50, 0.8, 20_000, 20, Map.of("rd-5", 10), 15,
                List.of(new SecondaryOperation("bend", "Bending", 40, 6, 0.3)));
        return new CostJob("Order 1", "EUR", locale, code, machine, rates, List.of(work), List.of(a, b),
                List.of(new CostLine("l1", "Plate A", 100, List.of(new CostLine.Need("a", 1)), List.of(), 0, List.of(200, 50)),
                        new CostLine("l2", "Bracket B", 50, List.of(new CostLine.Need("b", 1)), List.of(), 0, List.of())));
    }
}
