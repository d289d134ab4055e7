// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting.boxes;

import java.util.function.LongSupplier;

/**
 * The work that a search may do: counted trials against a limit, so that a result does not depend on the clock; or, where a
 * caller asks for it, seconds.
 */
public final class Work {

    private final long limit;
    private final LongSupplier clock;
    private final long start;
    private final double nanos;
    private long done;

    /** @param limit largest number of trial placements */
    public Work(long limit) {
        this(limit, Double.POSITIVE_INFINITY, () -> 0);
    }

    private Work(long limit, double nanos, LongSupplier clock) {
        this.limit = limit;
        this.clock = clock;
        this.start = clock.getAsLong();
        this.nanos = nanos;
    }

    /** A time budget on a clock in ns: results then differ from run to run. */
    public static Work seconds(double seconds, LongSupplier clock) {
        return new Work(Long.MAX_VALUE, seconds * 1e9, clock);
    }

    public void add(long trials) {
        done += trials;
    }

    public boolean spent() {
        return share() >= 1;
    }

    /** Whether the given share of the limit, 0 to 1, is used up. */
    public boolean spent(double share) {
        return share() >= share;
    }

    /** Used share of the limit, 0 upward. */
    public double share() {
        return nanos < Double.POSITIVE_INFINITY ? (clock.getAsLong() - start) / nanos : (double) done / limit;
    }

    public long done() {
        return done;
    }

    public long left() {
        return Math.max(0, limit - done);
    }
}
