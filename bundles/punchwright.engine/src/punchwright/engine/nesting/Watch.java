// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

/** Who waits for layouts: is told the best so far and may say that it is enough. */
public interface Watch {

    /** Tells nobody and goes on to the end. */
    Watch SILENT = new Watch() {
        @Override
        public void best(Nesting best, double share) {
            // nobody listens
        }

        @Override
        public boolean cancelled() {
            return false;
        }
    };

    /** A better result has been found; {@code share} of the work limit is used up, 0 to 1. Its cost bound may still be 0. */
    void best(Nesting best, double share);

    /** Whether the search shall stop and give the best so far. */
    boolean cancelled();
}
