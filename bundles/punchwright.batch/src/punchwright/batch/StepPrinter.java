// SPDX-License-Identifier: EPL-2.0
package punchwright.batch;

import java.io.PrintStream;
import java.util.Locale;

import punchwright.engine.planning.Progress;

/** Prints each step of a long computation once, on the stream for progress. */
final class StepPrinter implements Progress {

    private final PrintStream stream;
    private String last = "";
    private String best = "";

    /** @param stream where to print; null prints nothing */
    StepPrinter(PrintStream stream) {
        this.stream = stream;
    }

    @Override
    public void at(String step, double share) {
        if (stream != null && !step.equals(last)) {
            stream.println(String.format(Locale.ROOT, "%3.0f %%  %s", 100 * share, step));
            last = step;
        }
    }

    @Override
    public void best(String words, double share) {
        if (stream != null && !words.equals(best)) {
            stream.println("       best so far: " + words);
            best = words;
        }
    }

    @Override
    public boolean cancelled() {
        return Thread.currentThread().isInterrupted();
    }
}
