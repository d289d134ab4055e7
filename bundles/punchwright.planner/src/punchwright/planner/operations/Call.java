// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.operations;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;

import punchwright.engine.planning.Progress;

/**
 * One call of an operation, from the workbench or the command line.
 *
 * @param workspace folder of the workspace
 * @param words     words after the operation's name, without options
 * @param options   options by name without dashes; a switch has the value "true"
 * @param progress  told where it is, asked whether to go on
 */
public record Call(Path workspace, List<String> words, Map<String, String> options, Progress progress) {

    /** Stands between the values of an option given several times: no text typed on one line has it. */
    public static final String SEPARATOR = "\n";

    public Call {
        words = List.copyOf(words);
        options = Map.copyOf(options);
    }

    /** Every value of an option that may be given several times, in order; none when it was not given. */
    public List<String> all(String name) {
        return options.containsKey(name) ? List.of(options.get(name).split(SEPARATOR)) : List.of();
    }

    public String option(String name, String otherwise) {
        return options.getOrDefault(name, otherwise);
    }
}
