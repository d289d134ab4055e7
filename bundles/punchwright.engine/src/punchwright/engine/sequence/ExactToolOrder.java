// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.sequence;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import punchwright.engine.tooling.ToolUse;

/** The order with the least time for changes and, of those, the fewest large openings before small ones of the same kind. */
final class ExactToolOrder {

    /** One inversion of size weighs less than any difference of change time: 14 groups make at most 91 of them. */
    private static final double INVERSION_S = 1e-6;

    private final ToolOrder order;
    private final List<ToolGroup> groups;
    private final ToolUse atHand;
    private final int n;
    private final int[] needs;
    private final int[] larger;
    private final double[] cost;
    private final byte[] before;

    ExactToolOrder(ToolOrder order, List<ToolGroup> groups, ToolUse atHand) {
        this.order = order;
        this.groups = groups;
        this.atHand = atHand;
        this.n = groups.size();
        this.needs = new int[n];
        this.larger = new int[n];
        this.cost = new double[n << n];
        this.before = new byte[n << n];
    }

    /** The groups in order; null when the rules contradict each other. */
    List<ToolGroup> order() {
        if (n == 0) {
            return List.of();
        }
        relations();
        Arrays.fill(cost, Double.POSITIVE_INFINITY);
        for (int g = 0; g < n; g++) {
            if (needs[g] == 0) {
                cost[n * (1 << g) + g] = order.changeS(atHand, groups.get(g).use());
                before[n * (1 << g) + g] = -1;
            }
        }
        for (int done = 1; done < 1 << n; done++) {
            extend(done);
        }
        return best();
    }

    private void relations() {
        for (int g = 0; g < n; g++) {
            for (int o = 0; o < n; o++) {
                ToolGroup a = groups.get(g);
                ToolGroup b = groups.get(o);
                needs[g] |= o != g && order.comesFirst(b, a) ? 1 << o : 0;
                larger[g] |= a.kind() == b.kind() && b.sizeMm() > a.sizeMm() ? 1 << o : 0;
            }
        }
    }

    private void extend(int done) {
        for (int last = 0; last < n; last++) {
            double so = cost[n * done + last];
            if (so == Double.POSITIVE_INFINITY) {
                continue;
            }
            for (int g = 0; g < n; g++) {
                if ((done >> g & 1) == 0 && (needs[g] & ~done) == 0) {
                    int to = n * (done | 1 << g) + g;
                    double c = so + order.changeS(groups.get(last).use(), groups.get(g).use())
                            + INVERSION_S * Integer.bitCount(larger[g] & done);
                    if (c < cost[to] - 1e-12) {
                        cost[to] = c;
                        before[to] = (byte) last;
                    }
                }
            }
        }
    }

    private List<ToolGroup> best() {
        int all = (1 << n) - 1;
        int last = 0;
        for (int g = 1; g < n; g++) {
            last = cost[n * all + g] < cost[n * all + last] - 1e-12 ? g : last;
        }
        if (cost[n * all + last] == Double.POSITIVE_INFINITY) {
            return null;
        }
        List<ToolGroup> ordered = new ArrayList<>();
        int done = all;
        for (int g = last; g >= 0;) {
            ordered.add(groups.get(g));
            int earlier = before[n * done + g];
            done &= ~(1 << g);
            g = earlier;
        }
        return ordered.reversed();
    }
}
