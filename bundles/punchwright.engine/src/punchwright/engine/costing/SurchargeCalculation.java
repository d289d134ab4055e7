// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.costing;

import static punchwright.engine.costing.Formulas.mul;
import static punchwright.engine.costing.Formulas.percent;
import static punchwright.engine.costing.Formulas.ref;
import static punchwright.engine.costing.Formulas.round;
import static punchwright.engine.costing.Formulas.sum;
import static punchwright.engine.costing.Formulas.sumOf;

import java.util.List;

/**
 * Differentiated surcharge calculation: overheads as per cent of direct costs [money].
 *
 * <p>Formula: material overhead = % of direct material; production overhead = % of direct labour; production cost = all
 * direct costs + both; administration and sales overhead = % of production cost; total cost = production cost + both. Each
 * surcharge is rounded to the cent, as a person would write it down, so that the printed parts add up. Machine hours stand
 * among the direct costs; then the production surcharge is the residual one on labour. Source: the scheme of German cost
 * accounting as in BWR teaching page "Zuschlagskalkulation", whose example is in the tests (it misprints 2371.14 for
 * 2371.74).
 */
final class SurchargeCalculation {

    private SurchargeCalculation() {
    }

    /** The four rates; cells {@code R_..._overhead}, and profit. */
    static void addRates(CostContext c, double material, double production, double admin, double sales, double profit) {
        c.under("section.rates", c.text("heading.surcharges"));
        c.input("R_material_overhead", "r.material_overhead", "%", material, "src.rates");
        c.input("R_production_overhead", "r.production_overhead", "%", production, "src.rates");
        c.input("R_admin_overhead", "r.admin_overhead", "%", admin, "src.rates");
        c.input("R_sales_overhead", "r.sales_overhead", "%", sales, "src.rates");
        c.input("R_profit", "r.profit", "%", profit, "src.rates");
    }

    /**
     * Adds the surcharges of a line.
     *
     * @param scope    "L1"
     * @param material direct material
     * @param labour   direct labour
     * @param direct   names of all direct cost cells, in money rounded to the cent
     * @param overhead name for the sum of the four surcharges
     */
    static void addTo(CostContext c, String scope, Expression material, Expression labour, List<String> direct, String overhead) {
        String mgk = surcharge(c, scope, "material_overhead", material, "R_material_overhead");
        String fgk = surcharge(c, scope, "production_overhead", labour, "R_production_overhead");
        String hk = c.formula(c.own("M", scope, "production_cost_lot"), "m.production_cost", "$",
                sum(List.of(sumOf(direct), ref(mgk), ref(fgk))), "src.surcharge");
        String admin = surcharge(c, scope, "admin_overhead", ref(hk), "R_admin_overhead");
        String sales = surcharge(c, scope, "sales_overhead", ref(hk), "R_sales_overhead");
        c.formula(overhead, "m.overheads", "$", sumOf(List.of(mgk, fgk, admin, sales)), "src.surcharge");
    }

    private static String surcharge(CostContext c, String scope, String name, Expression base, String rate) {
        return c.formula(c.own("M", scope, name + "_lot"), "m." + name, "$", round(mul(base, percent(ref(rate))), 2),
                "src.surcharge");
    }
}
