// SPDX-License-Identifier: EPL-2.0
package punchwright.benchmarks.layout;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import punchwright.benchmarks.Words;

/** Arguments of the layout benchmark. */
record Options(double seconds, long seed, boolean turn, List<Path> paths) {

    static final String USAGE = "bench layout [--seconds N] [--seed N] [--turn] PATH...\n"
            + "  --seconds N  processor time for each instance, default 2\n"
            + "  --seed N     seed of the search, default 1\n"
            + "  --turn       rectangles may also be turned by 90 degrees\n"
            + "  PATH         instance files, or folders that are searched for them: JSON of irregular strip sets"
            + " or of rectangle sets, XML of irregular sets, text lines name;kinds;width;height;w,h[,n];...\n"
            + "Prints one JSON line an instance, then a table. A file that cannot be read gives one message; the others go on.\n"
            + "Exit code: 0, 1 when a result is not valid, 2 for wrong arguments or when a file or an instance could not be"
            + " done.";

    /** @throws IllegalArgumentException naming the argument that is wrong */
    static Options of(List<String> arguments) {
        double seconds = 2;
        long seed = 1;
        boolean turn = false;
        List<Path> paths = new ArrayList<>();
        for (int i = 0; i < arguments.size(); i++) {
            String a = arguments.get(i);
            switch (a) {
                case "--seconds" -> seconds = Words.number(arguments, ++i);
                case "--seed" -> seed = Words.whole(arguments, ++i);
                case "--turn" -> turn = true;
                default -> paths.add(Words.path(a));
            }
        }
        if (paths.isEmpty()) {
            throw new IllegalArgumentException("no instance file given");
        }
        if (!(seconds > 0 && seconds < 1e6)) {
            throw new IllegalArgumentException("--seconds is " + seconds + "; give a number above 0");
        }
        return new Options(seconds, seed, turn, paths);
    }
}
