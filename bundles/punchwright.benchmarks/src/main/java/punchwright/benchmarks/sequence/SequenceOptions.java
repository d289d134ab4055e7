// SPDX-License-Identifier: EPL-2.0
package punchwright.benchmarks.sequence;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import punchwright.benchmarks.Words;

/** Arguments of the routing benchmark. */
record SequenceOptions(double seconds, long seed, int boundUpTo, List<Path> paths) {

    static final String USAGE = "bench sequence [--seconds N] [--seed N] [--bound-up-to N] PATH...\n"
            + "  --seconds N      processor time for each tour, default 10\n"
            + "  --seed N         seed of the search, default 1\n"
            + "  --bound-up-to N  lower bounds for instances of up to so many nodes, default 2000\n"
            + "  PATH             instance files of TSPLIB or folders of them; a list 'name : length' called solutions beside them"
            + " tells the optima";

    /** @throws IllegalArgumentException naming the argument that is wrong */
    static SequenceOptions of(List<String> arguments) {
        double seconds = 10;
        long seed = 1;
        int boundUpTo = 2000;
        List<Path> paths = new ArrayList<>();
        for (int i = 0; i < arguments.size(); i++) {
            String a = arguments.get(i);
            switch (a) {
                case "--seconds" -> seconds = Words.number(arguments, ++i);
                case "--seed" -> seed = Words.whole(arguments, ++i);
                case "--bound-up-to" -> boundUpTo = (int) Words.whole(arguments, ++i);
                default -> paths.add(Words.path(a));
            }
        }
        if (paths.isEmpty()) {
            throw new IllegalArgumentException("no instance file given");
        }
        if (!(seconds > 0)) {
            throw new IllegalArgumentException("--seconds is " + seconds + "; give a number above 0");
        }
        return new SequenceOptions(seconds, seed, boundUpTo, paths);
    }
}
