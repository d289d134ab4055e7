// SPDX-License-Identifier: EPL-2.0
package punchwright.benchmarks.layout;

/** One published instance. */
interface Instance {

    /**
     * What a run gave.
     *
     * @param best    best published value, or NaN
     * @param ours    bins, or length of the strip
     * @param bound   lower bound on it
     * @param density part area over used area in per cent, or NaN
     * @param seconds processor time
     * @param valid   verdict of an independent check: empty, or what is wrong
     */
    record Outcome(double best, double ours, double bound, double density, double seconds, String valid) {
    }

    String name();

    /** Instances that are summed in one line of the table. */
    String group();

    Outcome run(double seconds, long seed, boolean turn);
}
