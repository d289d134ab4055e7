// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.holding;

import java.util.ArrayList;
import java.util.List;

/**
 * Clamp setting and carriage positions at once, exactly: each need goes to one of the positions, a need near the edge also
 * between two neighbouring clamps; what that asks of positions and clamps are difference constraints. Depth first over the
 * needs by x, limited by work; meant for what the search with given clamp settings left open.
 */
final class JointSearch {

    /** A clamp setting and positions that serve all needs. */
    record Answer(double[] clamps, List<Stand> stands) {
    }

    private final Rig rig;
    private final List<Need> needs;
    private final double[] wish;
    private final int sides;
    private final int k;
    private int count;
    private int[] sideOf;
    private long budget;
    private boolean gaveUp;

    JointSearch(Rig rig, List<Need> needs, double[] wish, int sides) {
        this.rig = rig;
        this.needs = needs;
        this.wish = wish;
        this.sides = sides;
        this.k = wish.length;
    }

    boolean gaveUp() {
        return gaveUp;
    }

    /** An answer with at most {@code count} positions, or null when there is none or the work ran out. */
    Answer find(int count, long work) {
        this.count = count;
        this.budget = work;
        this.gaveUp = false;
        sideOf = new int[count];
        Differences start = new Differences(1 + count + k);
        return limits(start) ? search(start, 0, 0) : null;
    }

    /** Variable of a clamp: its centre on the carriage, negated, so that position + centre is a difference. */
    private int clamp(int i) {
        return 1 + count + i;
    }

    private boolean limits(Differences d) {
        boolean ok = true;
        for (int i = 0; i < k; i++) {
            ok &= d.add(clamp(i), 0, -rig.minCenterMm) && d.add(0, clamp(i), rig.maxCenterMm);
            ok &= i == 0 || d.add(clamp(i), clamp(i - 1), -rig.spacingMm);
        }
        for (int s = 1; s <= count; s++) {
            ok &= d.add(clamp(0), s, -rig.clampWidthMm / 2) && d.add(s, clamp(k - 1), rig.lengthMm - rig.clampWidthMm / 2);
        }
        return ok;
    }

    private Answer search(Differences d, int need, int used) {
        if (need == needs.size()) {
            return answer(d, used);
        }
        Need n = needs.get(need);
        for (int s = 0; s < Math.min(count, used + 1); s++) {
            for (int side = 0; side < sides; side++) {
                if ((s == used || sideOf[s] == side) && n.reachedY()[side]) {
                    sideOf[s] = side;
                    Answer found = place(d, n, need, s, side, Math.max(used, s + 1));
                    if (found != null || gaveUp) {
                        return found;
                    }
                }
            }
        }
        return null;
    }

    /** The need at position {@code s}: in reach, and in each gap between clamps in turn where it lies near the edge. */
    private Answer place(Differences before, Need n, int need, int s, int side, int used) {
        Differences reach = before.copy();
        gaveUp |= --budget < 0;
        double x = n.x()[side];
        if (gaveUp || !reach.add(s + 1, 0, x) || !reach.add(0, s + 1, rig.travelMm - x)) {
            return null;
        }
        if (!n.nearEdge()[side]) {
            return search(reach, need + 1, used);
        }
        for (int gap = 0; gap <= k; gap++) {
            Differences d = reach.copy();
            boolean ok = gap == 0 || d.add(s + 1, clamp(gap - 1), x - n.keepMm());
            ok = ok && (gap == k || d.add(clamp(gap), s + 1, -x - n.keepMm()));
            Answer found = ok ? search(d, need + 1, used) : null;
            if (found != null || gaveUp) {
                return found;
            }
        }
        return null;
    }

    private Answer answer(Differences d, int used) {
        double[] clamps = new double[k];
        for (int i = 0; i < k; i++) {
            clamps[i] = -d.fix(clamp(i), -wish[i]);
        }
        List<Stand> stands = new ArrayList<>();
        for (int s = 0; s < used; s++) {
            stands.add(new Stand(sideOf[s], d.fix(s + 1, (d.least(s + 1) + d.largest(s + 1)) / 2)));
        }
        return new Answer(clamps, stands);
    }
}
