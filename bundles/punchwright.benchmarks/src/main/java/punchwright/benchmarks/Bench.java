// SPDX-License-Identifier: EPL-2.0
package punchwright.benchmarks;

import java.io.IOException;
import java.util.Arrays;
import org.openjdk.jmh.Main;
import punchwright.benchmarks.feature.FeatureBench;
import punchwright.benchmarks.layout.LayoutBench;

/**
 * Starts the benchmarks. {@code layout} runs the layout search on published instances, {@code features} the recognition on
 * generated parts; any other arguments are those of JMH (a name pattern, {@code -f} forks, {@code -wi} and {@code -i} rounds).
 */
public final class Bench {

    private Bench() {
    }

    public static void main(String[] arguments) throws IOException {
        if (arguments.length > 0 && arguments[0].equals("layout")) {
            System.exit(LayoutBench.run(Arrays.asList(arguments).subList(1, arguments.length), System.out, System.err));
        }
        if (arguments.length > 0 && arguments[0].equals("features")) {
            System.exit(FeatureBench.run(Arrays.asList(arguments).subList(1, arguments.length), System.out, System.err));
        }
        Main.main(arguments);
    }
}
