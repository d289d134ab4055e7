// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting.bars;

import java.util.Arrays;

/** Pieces of each part on one bar of a kind (by number). */
public record Pattern(int kind, int[] counts) {

    /** The same with no more of any part than is still needed. */
    Pattern within(int[] demand) {
        int[] less = counts.clone();
        for (int j = 0; j < less.length; j++) {
            less[j] = Math.min(less[j], demand[j]);
        }
        return new Pattern(kind, less);
    }

    /** How often it can be run without making more than is needed. */
    int mostRuns(int[] demand) {
        int runs = Integer.MAX_VALUE;
        for (int j = 0; j < counts.length; j++) {
            runs = counts[j] > 0 ? Math.min(runs, demand[j] / counts[j]) : runs;
        }
        return runs == Integer.MAX_VALUE ? 0 : runs;
    }

    @Override
    public boolean equals(Object o) {
        return o instanceof Pattern p && kind == p.kind && Arrays.equals(counts, p.counts);
    }

    @Override
    public int hashCode() {
        return 31 * kind + Arrays.hashCode(counts);
    }
}
