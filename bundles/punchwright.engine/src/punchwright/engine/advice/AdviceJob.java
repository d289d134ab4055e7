// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.advice;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

import punchwright.engine.tooling.Holder;
import punchwright.engine.tooling.Tool;
import punchwright.engine.tooling.ToolingRules;

/**
 * Input of the advice.
 *
 * @param orders              the order book, each number once
 * @param machines            machines looked at
 * @param tools               tools owned and usable
 * @param holders             holders owned and usable
 * @param holderPrices        new prices of the holders owned
 * @param setUpPerHour        the setter's hour, currency
 * @param setUpMinutesPerTool minutes to set up one tool for a run
 * @param rules               shop rules of the choice of tools
 * @param options             how to look
 */
public record AdviceJob(List<BookOrder> orders, List<BookMachine> machines, List<Tool> tools, List<Holder> holders,
        List<HolderPrice> holderPrices, double setUpPerHour, double setUpMinutesPerTool, ToolingRules rules,
                AdviceOptions options) {

    /** What an owned holder cost new, currency: what new holders are priced from. */
    public record HolderPrice(String holderId, double price) {
    }

    public AdviceJob {
        orders = List.copyOf(orders);
        machines = List.copyOf(machines);
        tools = List.copyOf(tools);
        holders = List.copyOf(holders);
        holderPrices = List.copyOf(holderPrices);
        Set<String> numbers = new HashSet<>();
        orders.stream().filter(o -> !numbers.add(o.number())).findFirst().ifPresent(o -> {
            throw new IllegalArgumentException("order number " + o.number() + " stands twice in the book; each must be its own");
        });
    }
}
