// SPDX-License-Identifier: EPL-2.0
package punchwright.benchmarks.layout;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

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
                case "--seconds" -> seconds = number(arguments, ++i);
                case "--seed" -> seed = seed(arguments, ++i);
                case "--turn" -> turn = true;
                default -> paths.add(path(a));
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

    private static Path path(String a) {
        if (a.startsWith("--")) {
            throw new IllegalArgumentException("unknown option " + a);
        }
        return Path.of(a);
    }

    private static long seed(List<String> arguments, int i) {
        double v = number(arguments, i);
        if (v != Math.rint(v)) {
            throw new IllegalArgumentException("--seed is " + arguments.get(i) + "; give a whole number");
        }
        return (long) v;
    }

    private static double number(List<String> arguments, int i) {
        if (i >= arguments.size()) {
            throw new IllegalArgumentException(arguments.get(i - 1) + " needs a number");
        }
        try {
            return Double.parseDouble(arguments.get(i));
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException(arguments.get(i - 1) + " needs a number, not " + arguments.get(i), e);
        }
    }
}
