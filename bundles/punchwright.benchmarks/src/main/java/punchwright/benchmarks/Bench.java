// SPDX-License-Identifier: EPL-2.0
package punchwright.benchmarks;

import java.io.IOException;
import org.openjdk.jmh.Main;

/** Starts the benchmarks; the arguments are those of JMH (a name pattern, {@code -f} forks, {@code -wi} and {@code -i} rounds). */
public final class Bench {

    private Bench() {
    }

    public static void main(String[] arguments) throws IOException {
        Main.main(arguments);
    }
}
