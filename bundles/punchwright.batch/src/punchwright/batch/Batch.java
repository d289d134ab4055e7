// SPDX-License-Identifier: EPL-2.0
package punchwright.batch;

import java.io.PrintStream;
import java.util.List;
import punchwright.engine.EngineVersion;

/** The command line: reads the arguments, runs what they ask for and returns the exit code. */
public final class Batch {

    /** Everything asked for was done. */
    public static final int DONE = 0;
    /** The arguments make no sense; nothing was done. */
    public static final int USAGE = 2;

    private static final String HELP = """
            Usage: punchwright batch [--help | --version]

            Exit codes: 0 done, 2 the arguments make no sense.""";

    private final PrintStream out;
    private final PrintStream err;

    /**
     * @param out where results go
     * @param err where errors go, one line each
     */
    public Batch(PrintStream out, PrintStream err) {
        this.out = out;
        this.err = err;
    }

    /**
     * Runs one command line.
     *
     * @param arguments the words after {@code batch}
     * @return the exit code
     */
    public int run(String... arguments) {
        List<String> words = List.of(arguments);
        if (words.equals(List.of("--version"))) {
            out.println("Punchwright " + EngineVersion.TEXT);
            return DONE;
        }
        if (words.equals(List.of("--help"))) {
            out.println(HELP);
            return DONE;
        }
        err.println("error: " + (words.isEmpty() ? "nothing to do" : "unknown words '" + String.join(" ", words) + "'")
                + "; --help lists what can be asked for");
        return USAGE;
    }
}
