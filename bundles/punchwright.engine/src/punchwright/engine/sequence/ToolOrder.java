// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.sequence;

import java.util.ArrayList;
import java.util.List;

import punchwright.engine.tooling.ToolUse;

/**
 * Orders the groups of one holding: precedence rules first, then the least time for changes, then small openings before
 * large. Up to {@link #EXACT} groups by dynamic programming over what is done and what came last (Bellman, Journal of the
 * ACM 9 (1962) 61-63; Held, Karp, Journal of SIAM 10 (1962) 196-210); beyond that always the cheapest next.
 */
final class ToolOrder {

    /** Largest number of groups that are ordered exactly. */
    static final int EXACT = 14;

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
        List<ToolGroup> exact = groups.size() <= EXACT ? new ExactToolOrder(this, groups, atHand).order() : null;
        return exact != null ? exact : cheapestNext(groups, atHand);
    }

    private List<ToolGroup> cheapestNext(List<ToolGroup> groups, ToolUse atHand) {
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
        return (ready.isEmpty() ? left : ready).stream().min(CheapestNext.preference(this, left, tool)).orElseThrow();
    }

    boolean comesFirst(ToolGroup first, ToolGroup later) {
        return PrecedenceRules.puts(rules, first, later);
    }

    /** Time of the change in s; 0 from no tool. */
    double changeS(ToolUse from, ToolUse to) {
        return from == null ? 0 : metric.changeS(ChangeKind.between(from, to));
    }
}
