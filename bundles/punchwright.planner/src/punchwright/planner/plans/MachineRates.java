// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.plans;

import java.util.List;

import punchwright.engine.costing.MachineHourRate;
import punchwright.engine.finding.Finding;
import punchwright.engine.tooling.ChoiceWeights;
import punchwright.model.shop.Library;
import punchwright.model.shop.Machine;
import punchwright.model.shop.Rates;

/** What an hour of a running machine costs, as the calculation of an order has it. */
final class MachineRates {

    private MachineRates() {
    }

    /** Machine hour, consumables and the operator's share, currency an hour; the usual one with a finding where inputs lack. */
    static double perHour(Library library, Machine machine, List<Finding> findings) {
        double rate = machine.getRate() == null ? 0
                : MachineHourRate.calculate(CostInput.rate(machine), library.getCurrency()).value("H_rate");
        if (!(rate > 0)) {
            findings.add(Finding.of(PlansReason.USUAL_RATE, machine.getName(), machine.getName(),
                    ChoiceWeights.USUAL.ratePerHour()));
            return ChoiceWeights.USUAL.ratePerHour();
        }
        Rates r = library.getRates();
        return rate + (r == null ? 0
                : r.getConsumablesPerHour() + r.getLabourPerHour() * machine.getRate().getOperatorSharePercent() / 100);
    }
}
