// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.sequence;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import punchwright.engine.tooling.ToolUse;

/**
 * Orders the groups of one holding: of those whose rules are met, always the one with the cheapest change from the tool
 * at hand; then the kind of work; then tools that are not needed again later; then whole multi-tools, small openings
 * before large.
 */
final class ToolOrder {

    private final RunMetric metric;
    private final List<PrecedenceRule> rules;

    ToolOrder(RunMetric metric, List<PrecedenceRule> rules) {
        this.metric = metric;
        this.rules = rules;
    }

    /**
     * @param groups   of one holding
     * @param atHand   tool that the holding before ended with; null at the start
     */
    List<ToolGroup> order(List<ToolGroup> groups, ToolUse atHand) {
        List<ToolGroup> left = new ArrayList<>(groups);
        List<ToolGroup> ordered = new ArrayList<>();
        ToolUse tool = atHand;
        while (!left.isEmpty()) {
            ToolGroup next = next(left, tool);
            ordered.add(next);
            left.remove(next);
            tool = next.use();
        }
        return ordered;
    }

    private ToolGroup next(List<ToolGroup> left, ToolUse tool) {
        List<ToolGroup> ready = left.stream().filter(g -> left.stream().noneMatch(o -> o != g && comesFirst(o, g))).toList();
        return (ready.isEmpty() ? left : ready).stream().min(preference(left, tool)).orElseThrow();
    }

    private boolean comesFirst(ToolGroup first, ToolGroup later) {
        return rules.stream().anyMatch(r -> r.puts(first, later));
    }

    private Comparator<ToolGroup> preference(List<ToolGroup> left, ToolUse tool) {
        return Comparator.<ToolGroup>comparingDouble(g -> tool == null ? 0 : changeS(tool, g.use()))
                .thenComparing(ToolGroup::kind)
                .thenComparing(g -> neededLater(g, left))
                .thenComparingDouble(g -> smallestInHolder(g, left))
                .thenComparingDouble(ToolGroup::sizeMm)
                .thenComparingInt(g -> g.use().number());
    }

    private double changeS(ToolUse from, ToolUse to) {
        return metric.changeS(ChangeKind.between(from, to));
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
