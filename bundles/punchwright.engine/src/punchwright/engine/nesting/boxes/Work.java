// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting.boxes;

import java.util.function.BooleanSupplier;
import java.util.function.LongSupplier;

/**
 * The work that a search may do: counted trials against a limit, so that a result does not depend on the clock; or, where a
 * caller asks for it, seconds. Who waits may stop it: all of it is spent then.
 */
public final class Work {

    private final long limit;
    private final LongSupplier clock;
    private final long start;
    private final double nanos;
    private final BooleanSupplier stopped;
    private long done;

    /** @param limit largest number of trial placements */
    public Work(long limit) {
        this(limit, () -> false);
    }

    /** @param stopped says when the rest of the work shall be left */
    public Work(long limit, BooleanSupplier stopped) {
        this(limit, Double.POSITIVE_INFINITY, () -> 0, stopped);
    }

    private Work(long limit, double nanos, LongSupplier clock, BooleanSupplier stopped) {
        this.limit = limit;
        this.clock = clock;
        this.start = clock.getAsLong();
        this.nanos = nanos;
        this.stopped = stopped;
    }

    /** Work of its own with another limit, stopped with this one. */
    public Work own(long ownLimit) {
        return new Work(Math.max(1, ownLimit), stopped);
    }

    /** A time budget on a clock in ns: results then differ from run to run. */
    public static Work seconds(double seconds, LongSupplier clock) {
        return new Work(Long.MAX_VALUE, seconds * 1e9, clock, () -> false);
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
        if (stopped.getAsBoolean()) {
            return Double.POSITIVE_INFINITY;
        }
        return nanos < Double.POSITIVE_INFINITY ? (clock.getAsLong() - start) / nanos : (double) done / limit;
    }

    public long done() {
        return done;
    }

    public long left() {
        return stopped.getAsBoolean() ? 0 : Math.max(0, limit - done);
    }
}
