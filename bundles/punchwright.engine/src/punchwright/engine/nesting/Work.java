// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

/** Counts trial placements against the limit, so that a result does not depend on the clock. */
final class Work {

    private final long limit;
    private long done;

    Work(long limit) {
        this.limit = limit;
    }

    void add(long trials) {
        done += trials;
    }

    boolean spent() {
        return done >= limit;
    }

    /** Whether the given share of the limit, 0 to 1, is used up. */
    boolean spent(double share) {
        return done >= limit * share;
    }

    long done() {
        return done;
    }
}
