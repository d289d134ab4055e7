// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.costing;

import static punchwright.engine.costing.Formulas.div;
import static punchwright.engine.costing.Formulas.ifGreater;
import static punchwright.engine.costing.Formulas.mul;
import static punchwright.engine.costing.Formulas.num;
import static punchwright.engine.costing.Formulas.percent;
import static punchwright.engine.costing.Formulas.ref;
import static punchwright.engine.costing.Formulas.sub;
import static punchwright.engine.costing.Formulas.sumOf;

import java.util.List;
import java.util.Locale;

/**
 * Machine-hour rate: what an hour of the running machine costs without labour [money/h].
 *
 * <p>Formula, with running hours {@code T = planned hours * occupancy}: depreciation (replacement - residual) / (life * T);
 * imputed interest basis / 2 * rate / T; space area * rate / T; energy kW * load * price; maintenance share * replacement / T;
 * anything else by the hour. Basis of the interest is the purchase or the replacement value (a setting, as sources differ).
 * Range: life, planned hours and occupancy above 0, else the yearly parts are 0 and the finding COST-MACHINE-RATE says so.
 * Source: practice after VDI 3258 sheet 1, as taught by Haufe, "Maschinenstundensatz", and ABWL-Camp, "Maschinenstundensatz",
 * whose worked example (70.81 per h) is in the tests.
 */
public final class MachineHourRate {

    private MachineHourRate() {
    }

    /** The rate alone, as a sheet whose cell {@code H_rate} is the result. */
    public static CostSheet calculate(MachineRateInputs inputs, String currency) {
        CostSheetBuilder builder = new CostSheetBuilder(inputs.name(), currency);
        addTo(new CostContext(builder, "", Locale.ENGLISH), inputs);
        return builder.build();
    }

    static void addTo(CostContext c, MachineRateInputs in) {
        c.under("section.machine", in.name());
        inputs(c, in);
        c.formula(h(c, "running_hours"), "h.running_hours", "h/a", mul(r(c, "planned_hours"), percent(r(c, "occupancy"))),
                "src.vdi");
        perHour(c, in);
        c.formula(h(c, "rate"), "h.rate", "$/h", sumOf(List.of(h(c, "depreciation"), h(c, "interest"), h(c, "space"),
                h(c, "energy"), h(c, "maintenance"), h(c, "other"))), "src.vdi");
        if (in.lifeYears() <= 0 || in.hoursPerYear() <= 0 || in.occupancyPercent() <= 0) {
            c.report(CostReason.MACHINE_RATE, in.name(), in.lifeYears(), in.hoursPerYear(), in.occupancyPercent());
        }
    }

    private static void inputs(CostContext c, MachineRateInputs in) {
        c.input(h(c, "purchase"), "h.purchase", "$", in.purchaseValue(), "src.machine");
        c.input(h(c, "replacement"), "h.replacement", "$", in.replacementValue(), "src.machine");
        c.input(h(c, "residual"), "h.residual", "$", in.residualValue(), "src.machine");
        c.input(h(c, "life"), "h.life", "a", in.lifeYears(), "src.machine");
        c.input(h(c, "planned_hours"), "h.planned_hours", "h/a", in.hoursPerYear(), "src.machine");
        c.input(h(c, "occupancy"), "h.occupancy", "%", in.occupancyPercent(), "src.machine");
        c.input(h(c, "interest_rate"), "h.interest_rate", "%/a", in.interestRatePercent(), "src.machine");
        c.input(h(c, "area"), "h.area", "m2", in.spaceM2(), "src.machine");
        c.input(h(c, "area_rate"), "h.area_rate", "$/(m2 a)", in.spaceRatePerM2Year(), "src.machine");
        c.input(h(c, "power"), "h.power", "kW", in.powerKw(), "src.machine");
        c.input(h(c, "load"), "h.load", "%", in.loadFactorPercent(), "src.machine");
        c.input(h(c, "energy_price"), "h.energy_price", "$/kWh", in.energyPricePerKwh(), "src.machine");
        c.input(h(c, "maintenance_share"), "h.maintenance_share", "%/a", in.maintenanceSharePercent(), "src.machine");
        c.input(h(c, "other"), "h.other", "$/h", in.otherPerHour(), "src.machine");
    }

    private static void perHour(CostContext c, MachineRateInputs in) {
        Expression basis = r(c, in.interestBasis() == MachineRateInputs.InterestBasis.PURCHASE ? "purchase" : "replacement");
        Expression hours = r(c, "running_hours");
        Expression lifeHours = mul(r(c, "life"), hours);
        c.formula(h(c, "depreciation"), "h.depreciation", "$/h",
                guarded(lifeHours, div(sub(r(c, "replacement"), r(c, "residual")), lifeHours)), "src.vdi");
        c.formula(h(c, "interest"), "h.interest", "$/h",
                guarded(hours, div(mul(div(basis, num(2)), percent(r(c, "interest_rate"))), hours)), "src.vdi");
        c.formula(h(c, "space"), "h.space", "$/h",
                guarded(hours, div(mul(r(c, "area"), r(c, "area_rate")), hours)), "src.vdi");
        c.formula(h(c, "energy"), "h.energy", "$/h",
                mul(r(c, "power"), percent(r(c, "load")), r(c, "energy_price")), "src.vdi");
        c.formula(h(c, "maintenance"), "h.maintenance", "$/h",
                guarded(hours, div(mul(r(c, "replacement"), percent(r(c, "maintenance_share"))), hours)), "src.vdi");
    }

    private static Expression guarded(Expression divisor, Expression quotient) {
        return ifGreater(divisor, num(0), quotient, num(0));
    }

    private static Expression r(CostContext c, String name) {
        return ref(h(c, name));
    }

    private static String h(CostContext c, String name) {
        return c.own("H", name);
    }
}
