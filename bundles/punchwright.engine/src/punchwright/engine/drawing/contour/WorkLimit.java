// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.contour;

import java.util.concurrent.atomic.AtomicLong;

/**
 * A bound on comparisons, so that a drawing in which everything lies over everything ends in a finding and not in hours. It
 * counts work, not time: the same drawing passes or fails everywhere, whatever the number of processors.
 */
final class WorkLimit {

    private final long most;
    private final AtomicLong spent = new AtomicLong();

    WorkLimit(long most) {
        this.most = most;
    }

    void spend(long steps) {
        spent.addAndGet(steps);
    }

    boolean isSpent() {
        return spent.get() > most;
    }
}
