// SPDX-License-Identifier: EPL-2.0
package punchwright.batch;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import punchwright.planner.operations.Call;
import punchwright.planner.operations.UsageException;

/**
 * The words of a command line, sorted out: {@code [--workspace FOLDER] OPERATION [WORD | --option VALUE | --switch]...}.
 *
 * @param workspace folder, "." when not given
 * @param operation name; empty when only options were given
 * @param words     in order
 * @param options   by name without dashes; a switch has the value "true"
 */
record CommandLine(Path workspace, String operation, List<String> words, Map<String, String> options) {

    /** Options that stand alone. */
    private static final Set<String> SWITCHES = Set.of("help", "version", "json", "quiet", "trial", "keep", "anew");
    /** Options that may be given several times; of others the last one counts. */
    private static final Set<String> REPEATED = Set.of("pin", "forbid", "price");

    static CommandLine parse(String... arguments) {
        Path workspace = Path.of(".");
        String operation = "";
        List<String> words = new ArrayList<>();
        Map<String, String> options = new LinkedHashMap<>();
        Iterator<String> rest = List.of(arguments).iterator();
        while (rest.hasNext()) {
            String word = rest.next();
            if (word.equals("--workspace")) {
                workspace = Path.of(value(word, rest));
            } else if (word.startsWith("--") && word.length() > 2) {
                String name = word.substring(2);
                String value = SWITCHES.contains(name) ? "true" : value(word, rest);
                options.merge(name, value, (a, b) -> REPEATED.contains(name) ? a + Call.SEPARATOR + b : b);
            } else if (operation.isEmpty()) {
                operation = word;
            } else {
                words.add(word);
            }
        }
        return new CommandLine(workspace, operation, words, options);
    }

    private static String value(String option, Iterator<String> rest) {
        if (!rest.hasNext()) {
            throw new UsageException("option " + option + " needs a value");
        }
        return rest.next();
    }
}
