// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting.boxes;

/** Counts trial placements against a limit, so that a result does not depend on the clock. */
public final class Work {

    private final long limit;
    private long done;

    public Work(long limit) {
        this.limit = limit;
    }

    public void add(long trials) {
        done += trials;
    }

    public boolean spent() {
        return done >= limit;
    }

    /** Whether the given share of the limit, 0 to 1, is used up. */
    public boolean spent(double share) {
        return done >= limit * share;
    }

    public long done() {
        return done;
    }

    public long left() {
        return Math.max(0, limit - done);
    }
}
