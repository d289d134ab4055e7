// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting.bars;

/** Least and most bars of each kind, and pieces still needed: one branch of the search. */
record Range(int[] least, int[] most, int[] onHand, int[] demand) {

    static Range of(BarProblem problem) {
        int pieces = 0;
        for (int d : problem.demand()) {
            pieces += d;
        }
        int[] onHand = problem.onHand().clone();
        for (int s = 0; s < onHand.length; s++) {
            onHand[s] = Math.min(onHand[s], pieces);
        }
        int[] most = new int[problem.kinds().size()];
        for (int k = 0; k < most.length; k++) {
            most[k] = onHand[problem.kinds().get(k).stock()];
        }
        return new Range(new int[most.length], most, onHand, problem.demand().clone());
    }

    Range atLeast(int kind, int bars) {
        int[] l = least.clone();
        l[kind] = Math.max(l[kind], bars);
        return new Range(l, most, onHand, demand);
    }

    Range atMost(int kind, int bars) {
        int[] m = most.clone();
        m[kind] = Math.min(m[kind], bars);
        return new Range(least, m, onHand, demand);
    }

    boolean isEmpty() {
        for (int k = 0; k < least.length; k++) {
            if (least[k] > most[k]) {
                return true;
            }
        }
        return false;
    }

    /** What is left after a pattern has been run. */
    Range after(BarProblem problem, Pattern p, int runs) {
        int[] l = least.clone();
        int[] m = most.clone();
        int[] h = onHand.clone();
        int[] d = demand.clone();
        l[p.kind()] = Math.max(0, l[p.kind()] - runs);
        m[p.kind()] -= runs;
        h[problem.kinds().get(p.kind()).stock()] -= runs;
        for (int j = 0; j < d.length; j++) {
            d[j] -= runs * p.counts()[j];
        }
        return new Range(l, m, h, d);
    }

    boolean done() {
        for (int d : demand) {
            if (d > 0) {
                return false;
            }
        }
        return true;
    }
}
