// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;

/**
 * Whatever the bytes, there is a result or a told refusal, within 10 s of processor time. {@code -Dpunchwright.damaged=100000}
 * sets the number of drawings, {@code -Dpunchwright.damagedFrom=N} the first seed; run the full count with a heap of 1 GB.
 */
class DamagedDrawingsTest {

    private static final int FEW = 150;
    private static final double LONGEST_S = 10;

    private final List<String> wrong = new ArrayList<>();
    private int read;
    private double longestS;
    private long longestSeed;

    @Test
    void damagedDrawingsGiveAResultOrARefusal() {
        long from = Long.getLong("punchwright.damagedFrom", 1);
        int count = Integer.getInteger("punchwright.damaged", FEW);
        for (long seed = from; seed < from + count && wrong.size() < 20; seed++) {
            long start = processorNs();
            read(seed);
            double seconds = (processorNs() - start) / 1e9;
            if (seconds > longestS) {
                longestS = seconds;
                longestSeed = seed;
            }
        }
        System.out.printf("%d damaged drawings, %d read, longest %.2f s (seed %d)%n", count, read, longestS, longestSeed);
        assertEquals(List.of(), wrong);
        assertTrue(longestS < LONGEST_S, "seed " + longestSeed + " took " + longestS + " s");
        assertTrue(read > count / 4, "only " + read + " of " + count
                + " gave a drawing: the damage hides the rest of the reader");
    }

    /** Time of this thread, which does not count what other programs take; most stages run on it alone. */
    private static long processorNs() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private void read(long seed) {
        DrawingOptions options = seed % 2 == 0 ? DrawingOptions.USUAL : DrawingOptions.EVERYTHING.withFilledAreasCut(true);
        try {
            DrawingResult r = DrawingReader.survey(new ByteArrayInputStream(new DxfMutations(seed).next()),
                    "seed " + seed, options);
            read++;
            r.findings().forEach(f -> f.message());
            if (Double.isNaN(r.areaMm2()) || Double.isNaN(r.cutLengthMm()) || Double.isNaN(r.drawn().cutLengthMm())) {
                wrong.add("seed " + seed + ": a figure is not a number");
            }
        } catch (DrawingException told) {
            if (told.finding().message().isEmpty()) {
                wrong.add("seed " + seed + ": a refusal without words");
            }
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError thrown) {
            StackTraceElement[] at = thrown.getStackTrace();
            wrong.add("seed " + seed + ": " + thrown
                    + (at.length == 0 ? "" : " at " + at[0] + " " + (at.length > 3 ? at[3] : "")));
        }
    }
}
