// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.planning;

/** How a long computation tells where it is and asks whether to go on. */
public interface Progress {

    /** Tells nobody and goes on to the end. */
    Progress SILENT = new Progress() {
        @Override
        public void at(String step, double share) {
            // nobody listens
        }

        @Override
        public boolean cancelled() {
            return false;
        }
    };

    /** What is being done, and the share done, 0 to 1. */
    void at(String step, double share);

    /** A better layout has been found, told in a few words; {@code share} of the work on it is done, 0 to 1. */
    default void best(String words, double share) {
        // nobody listens
    }

    /** Whether the person has cancelled. */
    boolean cancelled();

    /** Stops with {@link CancelledException} when the person has cancelled. */
    default void check() {
        if (cancelled()) {
            throw new CancelledException();
        }
    }
}
