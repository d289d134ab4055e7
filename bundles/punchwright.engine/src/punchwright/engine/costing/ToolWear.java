// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.costing;

import static punchwright.engine.costing.Formulas.add;
import static punchwright.engine.costing.Formulas.div;
import static punchwright.engine.costing.Formulas.ifGreater;
import static punchwright.engine.costing.Formulas.mul;
import static punchwright.engine.costing.Formulas.num;
import static punchwright.engine.costing.Formulas.ref;
import static punchwright.engine.costing.Formulas.sub;

import java.util.Locale;

/**
 * Wear of a tool for each hit [money/hit].
 *
 * <p>Formula: (price - residual + grinds * cost of a grind) / (hits per grind * life factor * (grinds + 1)): a tool is sharp once
 * when bought and once more after each grind. Inputs: money, hits, counts; hits per grind and factor above 0, else the wear is 0
 * and the finding COST-TOOL-LIFE says so. Source: derived; the same structure, with a life in hours, is in the machine-hour
 * example of ABWL-Camp (2000 with 9 grinds at 25 * 2.8 in 10 * 15 h gives 17.533 per h), which is in the tests.
 */
public final class ToolWear {

    private ToolWear() {
    }

    /** Cost of one hit, money. */
    public static double perHit(ToolPrice tool, double lifeFactor) {
        CostSheetBuilder builder = new CostSheetBuilder(tool.label(), "EUR");
        CostContext c = new CostContext(builder, "", Locale.ENGLISH);
        String factor = c.shared("X_life_factor", "X", "", lifeFactor, "src.material");
        return builder.value(addTo(c, tool, "X", factor));
    }

    /** Adds the tool's inputs, once, and its cost per hit in a material; returns the latter's name. */
    static String addTo(CostContext c, ToolPrice tool, String material, String factorCell) {
        String word = c.word("T", tool.toolId());
        String result = CellNames.of(word, material, "per_hit");
        if (c.has(result)) {
            return result;
        }
        c.under("section.tools", tool.label());
        String price = shared(c, word, "price", "$", tool.price());
        String residual = shared(c, word, "residual", "$", tool.residualValue());
        String grinds = shared(c, word, "grinds", "pcs", tool.grinds());
        String cost = shared(c, word, "grind_cost", "$", tool.grindCost());
        String hits = c.shared(CellNames.of(word, material, "hits_per_grind"), c.text("t.hits_per_grind"), "pcs",
                tool.hitsPerGrind(), "src.tool");
        Expression life = mul(ref(hits), ref(factorCell), add(ref(grinds), num(1)));
        Expression money = add(sub(ref(price), ref(residual)), mul(ref(grinds), ref(cost)));
        if (tool.hitsPerGrind() <= 0) {
            c.report(CostReason.TOOL_LIFE, tool.label());
        }
        return c.formula(result, "t.per_hit", "$", ifGreater(life, num(0), div(money, life), num(0)), "src.wear");
    }

    private static String shared(CostContext c, String word, String name, String unit, double value) {
        return c.shared(CellNames.of(word, name), c.text("t." + name), unit, value, "src.tool");
    }
}
