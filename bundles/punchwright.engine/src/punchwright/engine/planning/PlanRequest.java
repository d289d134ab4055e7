// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.planning;

import java.util.List;

import punchwright.engine.press.Machine;
import punchwright.engine.tooling.Elsewhere;
import punchwright.engine.tooling.Holder;
import punchwright.engine.tooling.Readiness;
import punchwright.engine.tooling.Tool;

/**
 * One order on one machine.
 *
 * @param title    number of the order, for messages
 * @param machine  press
 * @param tools    tools owned
 * @param holders  multi-tool holders owned
 * @param demands  parts with quantities
 * @param stock    sheets in stock
 * @param rules    shop rules
 * @param readiness what stands ready in the machine, and what making a tool ready takes
 * @param elsewhere other machines and materials of the shop, for the nearest way out of a refusal
 * @param kept     layouts that are used as they are
 */
public record PlanRequest(String title, Machine machine, List<Tool> tools, List<Holder> holders, List<PartDemand> demands,
        List<StockGroup> stock, PlanningRules rules, Readiness readiness, Elsewhere elsewhere,
        List<KeptSheet> kept) {

    public PlanRequest {
        tools = List.copyOf(tools);
        holders = List.copyOf(holders);
        demands = List.copyOf(demands);
        stock = List.copyOf(stock);
        kept = List.copyOf(kept);
    }

    /** Every layout is made by the program. */
    public PlanRequest(String title, Machine machine, List<Tool> tools, List<Holder> holders, List<PartDemand> demands,
            List<StockGroup> stock, PlanningRules rules, Readiness readiness, Elsewhere elsewhere) {
        this(title, machine, tools, holders, demands, stock, rules, readiness, elsewhere, List.of());
    }

    /** Nothing is known of the rest of the shop. */
    public PlanRequest(String title, Machine machine, List<Tool> tools, List<Holder> holders, List<PartDemand> demands,
            List<StockGroup> stock, PlanningRules rules, Readiness readiness) {
        this(title, machine, tools, holders, demands, stock, rules, readiness, Elsewhere.NOTHING);
    }

    /** Nothing stands ready. */
    public PlanRequest(String title, Machine machine, List<Tool> tools, List<Holder> holders, List<PartDemand> demands,
            List<StockGroup> stock, PlanningRules rules) {
        this(title, machine, tools, holders, demands, stock, rules, Readiness.USUAL);
    }
}
