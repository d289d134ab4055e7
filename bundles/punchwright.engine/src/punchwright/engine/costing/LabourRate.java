// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.costing;

import static punchwright.engine.costing.Formulas.ifGreater;
import static punchwright.engine.costing.Formulas.mul;
import static punchwright.engine.costing.Formulas.num;
import static punchwright.engine.costing.Formulas.percent;
import static punchwright.engine.costing.Formulas.ref;

/**
 * Labour by the hour and the shop's other rates [money/h, min, per cent].
 *
 * <p>Formula: labour of a running hour = labour rate * attendance share; attendance below 100 % stands for unattended running or
 * one operator at several machines, above for a second operator. A setter's rate of 0 means the operator sets up. Source: multi-
 * machine attendance as in REFA methods, from memory.
 */
final class LabourRate {

    private LabourRate() {
    }

    /** Rates that hold for all machines; cells {@code R_...}. */
    static void addShared(CostContext c, ShopRates in) {
        c.under("section.rates", c.text("heading.rates"));
        c.input("R_labour", "r.labour", "$/h", in.labourPerHour(), "src.rates");
        c.input("R_setter", "r.setter", "$/h", in.setUpPerHour(), "src.rates");
        c.input("R_programmer", "r.programmer", "$/h", in.programmingPerHour(), "src.rates");
        c.input("R_consumables", "r.consumables", "$/h", in.consumablesPerHour(), "src.rates");
        c.input("R_set_up_base", "r.set_up_base", "min", in.setUpBaseMinutes(), "src.rates");
        c.input("R_set_up_per_tool", "r.set_up_per_tool", "min", in.setUpMinutesPerTool(), "src.rates");
        c.input("R_first_piece", "r.first_piece", "min", in.firstPieceCheckMinutes(), "src.rates");
        c.input("R_programming_lots", "r.programming_lots", "pcs", in.programmingLots(), "src.rates");
        c.input("R_remnant_credit", "r.remnant_credit", "%", in.remnantCreditPercent(), "src.rates");
        c.input("R_scrap_rate", "r.scrap_rate", "%", in.scrapRatePercent(), "src.rates");
        c.formula("R_set_up", "r.set_up", "$/h", ifGreater(ref("R_setter"), num(0), ref("R_setter"), ref("R_labour")), "src.own");
        if (in.labourPerHour() <= 0) {
            c.report(CostReason.LABOUR_RATE, c.text("heading.rates"));
        }
    }

    /** Labour of a running hour of the machine; cell {@code H_labour}. */
    static void addAttendance(CostContext c, MachineRateInputs in) {
        c.input(c.own("H", "attendance"), "h.attendance", "%", in.operatorSharePercent(), "src.machine");
        c.formula(c.own("H", "labour"), "h.labour", "$/h",
                mul(ref("R_labour"), percent(ref(c.own("H", "attendance")))), "src.refa");
    }
}
