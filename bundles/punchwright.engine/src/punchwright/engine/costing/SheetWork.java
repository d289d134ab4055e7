// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.costing;

import java.util.List;

/**
 * All sheets of one material and thickness for the order.
 *
 * @param label           what a person reads, as "DC01, 2 mm"
 * @param materialId      stable id of the material
 * @param scrapValuePerKg what scrap brings, money per kg
 * @param lifeFactor      factor on tool life in this material, 1 is usual
 * @param toolsToLoad     tools that must be set up because they do not stand in the machine
 * @param runs            the layouts and how often each is run
 * @param tools           the tools used, with hits between grinds in this material's group
 */
public record SheetWork(String label, String materialId, double scrapValuePerKg, double lifeFactor, int toolsToLoad,
        List<SheetRun> runs, List<ToolPrice> tools) {

    public SheetWork {
        runs = List.copyOf(runs);
        tools = List.copyOf(tools);
    }
}
