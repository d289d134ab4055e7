// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.sequence;

import java.util.Comparator;
import java.util.List;

import punchwright.engine.tooling.ToolUse;

/**
 * Which group to take next: the cheapest change; then the kind of work; then tools that are not needed again later; then whole
 * multi-tools, small openings before large.
 */
final class CheapestNext {

    private CheapestNext() {
    }

    static Comparator<ToolGroup> preference(ToolOrder order, List<ToolGroup> left, ToolUse tool) {
        return Comparator.<ToolGroup>comparingDouble(g -> order.changeS(tool, g.use()))
                .thenComparing(ToolGroup::kind)
                .thenComparing(g -> neededLater(g, left))
                .thenComparingDouble(g -> smallestInHolder(g, left))
                .thenComparingDouble(ToolGroup::sizeMm)
                .thenComparingInt(g -> g.use().number());
    }

    private static boolean neededLater(ToolGroup group, List<ToolGroup> left) {
        return left.stream().anyMatch(o -> o != group && o.use().number() == group.use().number());
    }

    /** Size of the smallest opening of the tools that change cheaply with this one. */
    private static double smallestInHolder(ToolGroup group, List<ToolGroup> left) {
        return left.stream().filter(o -> o == group || ChangeKind.between(o.use(), group.use()) == ChangeKind.INSERT)
                .mapToDouble(ToolGroup::sizeMm).min().orElseThrow();
    }
}
