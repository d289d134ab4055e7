// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.costing;

import static punchwright.engine.costing.Formulas.div;
import static punchwright.engine.costing.Formulas.max;
import static punchwright.engine.costing.Formulas.mul;
import static punchwright.engine.costing.Formulas.num;
import static punchwright.engine.costing.Formulas.percent;
import static punchwright.engine.costing.Formulas.ref;
import static punchwright.engine.costing.Formulas.sub;
import static punchwright.engine.costing.Formulas.sum;

import java.util.ArrayList;
import java.util.List;

/**
 * Cost of the sheets of one material and thickness [money].
 *
 * <p>Formula: sheets * price - remnant credit - scrap credit. Remnant credit = sum over the layouts of runs * remnant
 * mass * price per kg of that sheet, times the credit share: the same figure as the layout stage's; scrap credit = (sheet
 * mass - mass of the parts - remnant mass, not below 0) * scrap value per kg. Masses in kg. A remnant that is used costs what
 * its stock record says. Source: mass balance; the credit share is common practice, no source.
 */
final class MaterialCost {

    private MaterialCost() {
    }

    /** Adds cells {@code J1_...}; {@code partMass} is the mass of all parts made. Returns the name of the net cost. */
    static String addTo(CostContext c, SheetWork work, String scope, Expression partMass) {
        List<Expression> cost = new ArrayList<>();
        List<Expression> mass = new ArrayList<>();
        List<Expression> remnant = new ArrayList<>();
        List<Expression> worth = new ArrayList<>();
        for (int i = 0; i < work.runs().size(); i++) {
            SheetRun run = work.runs().get(i);
            String stock = stock(c, run);
            c.under("section.work", work.label());
            Expression runs = ref(c.own(scope, "S" + (i + 1), "runs"));
            cost.add(mul(runs, ref(CellNames.of(stock, "price"))));
            mass.add(mul(runs, ref(CellNames.of(stock, "mass"))));
            remnant.add(mul(runs, ref(c.own(scope, "S" + (i + 1), "remnant_mass"))));
            worth.add(mul(runs, ref(remnantPrice(c, run, scope, "S" + (i + 1), stock))));
        }
        c.under("section.work", work.label());
        String sheets = c.formula(c.own(scope, "sheet_cost"), "j.sheet_cost", "$", sum(cost), "src.plan");
        String sheetMass = c.formula(c.own(scope, "sheet_mass"), "j.sheet_mass", "kg", sum(mass), "src.plan");
        String parts = c.formula(c.own(scope, "part_mass"), "j.part_mass", "kg", partMass, "src.plan");
        String kept = c.formula(c.own(scope, "remnant_mass"), "j.remnant_mass", "kg", sum(remnant), "src.plan");
        return credits(c, work, scope, ref(sheets), ref(sheetMass), ref(parts), ref(kept), sum(worth));
    }

    private static String credits(CostContext c, SheetWork work, String scope, Expression cost, Expression mass, Expression parts,
            Expression kept, Expression worth) {
        String scrapMass = c.formula(c.own(scope, "scrap_mass"), "j.scrap_mass", "kg", max(num(0), sub(mass, parts, kept)),
                "src.mass");
        String remnantCredit = c.formula(c.own(scope, "remnant_credit"), "j.remnant_credit", "$",
                mul(worth, percent(ref("R_remnant_credit"))), "src.practice");
        String scrapCredit = c.formula(c.own(scope, "scrap_credit"), "j.scrap_credit", "$",
                mul(ref(scrapMass), ref(CellNames.of(c.word("Mat", work.materialId()), "scrap_value"))), "src.mass");
        return c.formula(c.own(scope, "material"), "j.material", "$", sub(cost, ref(remnantCredit), ref(scrapCredit)), "src.own");
    }

    /** Price by mass of the remnants of one sheet. */
    private static String remnantPrice(CostContext c, SheetRun run, String scope, String layout, String stock) {
        Expression perKg = run.massKg() > 0 ? div(ref(CellNames.of(stock, "price")), ref(CellNames.of(stock, "mass"))) : num(0);
        return c.formula(c.own(scope, layout, "remnant_price"), "j.remnant_price", "$",
                mul(ref(c.own(scope, layout, "remnant_mass")), perKg), "src.mass");
    }

    /** Price and mass of a stock item, once for all plans. */
    private static String stock(CostContext c, SheetRun run) {
        String word = c.word("S", run.stockId());
        c.under("section.stock", run.label());
        if (run.pricePerSheet() <= 0 && !c.has(CellNames.of(word, "price"))) {
            c.report(CostReason.SHEET_PRICE, run.label(), run.pricePerSheet());
        }
        c.shared(CellNames.of(word, "price"), c.text("s.price"), "$", run.pricePerSheet(), "src.stock");
        c.shared(CellNames.of(word, "mass"), c.text("s.mass"), "kg", run.massKg(), "src.stock");
        return word;
    }
}
