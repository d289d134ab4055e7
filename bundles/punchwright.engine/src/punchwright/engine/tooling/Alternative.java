// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.List;

/**
 * One way to make a feature, side by side with others.
 *
 * @param tools        tools it needs, in order of use
 * @param hits         number of hits
 * @param seconds      press time of its hits without tool changes
 * @param wear         cost of tool wear, currency
 * @param costSeconds  time, wear, web and slivers together, in seconds of the machine
 * @param forcePercent largest force with reserve in per cent of the strongest seat that takes the tool
 * @param reachMm      how far it reaches beyond the outer contour
 * @param chosen       whether it was chosen
 * @param why          in a short sentence
 */
public record Alternative(List<Tool> tools, int hits, double seconds, double wear, double costSeconds, double forcePercent,
        double reachMm, boolean chosen, String why) {

    public Alternative {
        tools = List.copyOf(tools);
    }
}
