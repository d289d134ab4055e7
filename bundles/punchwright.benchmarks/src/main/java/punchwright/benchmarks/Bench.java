// SPDX-License-Identifier: EPL-2.0
package punchwright.benchmarks;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.openjdk.jmh.Main;
import punchwright.benchmarks.advice.AdviceBench;
import punchwright.benchmarks.feature.FeatureBench;
import punchwright.benchmarks.choice.ChoiceBench;
import punchwright.benchmarks.layout.DrawingSheets;
import punchwright.benchmarks.layout.LayoutBench;
import punchwright.benchmarks.sequence.SequenceBench;

/**
 * Starts the benchmarks. {@code layout} runs the layout search on published instances, {@code layout
 * --drawings} on parts of real drawings, {@code features} the recognition on
 * generated parts, {@code drawing [MB]} the reading of a large drawing here and with another reader, {@code advise} the purchase
 * advice on a seeded order book, {@code choice} the choice of tools on seeded shops, {@code sequence} the order of hits on
 * published routing instances; any other arguments are those of JMH (a name
 * pattern, {@code -f} forks, {@code -wi} and {@code -i} rounds).
 */
public final class Bench {

    private Bench() {
    }

    public static void main(String[] arguments) throws IOException {
        if (arguments.length > 1 && arguments[0].equals("layout") && arguments[1].equals("--drawings")) {
            System.exit(DrawingSheets.run(Arrays.asList(arguments).subList(1, arguments.length), System.out, System.err));
        }
        if (arguments.length > 0 && arguments[0].equals("layout")) {
            System.exit(LayoutBench.run(Arrays.asList(arguments).subList(1, arguments.length), System.out, System.err));
        }
        if (arguments.length > 0 && arguments[0].equals("features")) {
            System.exit(FeatureBench.run(Arrays.asList(arguments).subList(1, arguments.length), System.out, System.err));
        }
        if (arguments.length > 0 && arguments[0].equals("drawing")) {
            System.exit(inSmallHeap(DrawingRatio.class, Arrays.asList(arguments).subList(1, arguments.length)));
        }
        if (arguments.length > 0 && arguments[0].equals("advise")) {
            System.exit(AdviceBench.run(Arrays.asList(arguments).subList(1, arguments.length), System.out, System.err));
        }
        if (arguments.length > 0 && arguments[0].equals("choice")) {
            System.exit(ChoiceBench.run(Arrays.asList(arguments).subList(1, arguments.length), System.out, System.err));
        }
        if (arguments.length > 0 && arguments[0].equals("sequence")) {
            System.exit(SequenceBench.run(Arrays.asList(arguments).subList(1, arguments.length), System.out, System.err));
        }
        Main.main(arguments);
    }

    /** Runs a benchmark in a program of its own with a heap of 950 MB; gives its exit code. */
    private static int inSmallHeap(Class<?> main, List<String> arguments) throws IOException {
        List<String> command = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java")
                .toString(), "-Xmx950m", "-cp", System.getProperty("java.class.path"), main.getName()));
        command.addAll(arguments);
        try {
            return new ProcessBuilder(command).inheritIO().start().waitFor();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return 1;
        }
    }
}
