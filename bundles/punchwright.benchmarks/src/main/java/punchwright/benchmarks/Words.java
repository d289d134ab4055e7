// SPDX-License-Identifier: EPL-2.0
package punchwright.benchmarks;

import java.nio.file.Path;
import java.util.List;

/** Words of a command line as numbers and paths. */
public final class Words {

    private Words() {
    }

    /** @throws IllegalArgumentException when there is no word at the index or it is no number; names the option before it */
    public static double number(List<String> words, int i) {
        if (i >= words.size()) {
            throw new IllegalArgumentException(words.get(i - 1) + " needs a number");
        }
        try {
            return Double.parseDouble(words.get(i));
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException(words.get(i - 1) + " needs a number, not " + words.get(i), e);
        }
    }

    /** @throws IllegalArgumentException as {@link #number}, and when the number is not whole */
    public static long whole(List<String> words, int i) {
        double v = number(words, i);
        if (v != Math.rint(v)) {
            throw new IllegalArgumentException(words.get(i - 1) + " is " + words.get(i) + "; give a whole number");
        }
        return (long) v;
    }

    /** @throws IllegalArgumentException when the word is an option */
    public static Path path(String word) {
        if (word.startsWith("--")) {
            throw new IllegalArgumentException("unknown option " + word);
        }
        return Path.of(word);
    }
}
