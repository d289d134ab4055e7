// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.operations;

import java.io.IOException;
import java.util.List;
import java.util.Set;

/** Something that the workbench and the command line can both do. */
public interface ShopOperation {

    /** One word, as typed on the command line. */
    String name();

    /** One line: what it does. */
    String summary();

    /** Words and options after the name, in the usual notation; none unless said otherwise. */
    default String usage() {
        return "";
    }

    /** More for its help, for the words given so far; ends with a line's end, empty unless said otherwise. */
    default String details(List<String> words) {
        return "";
    }

    /** Names of the options it takes, without dashes; none unless said otherwise. */
    default Set<String> options() {
        return Set.of();
    }

    /**
     * Does it.
     *
     * @throws UsageException when words or options make no sense
     * @throws IOException    when a file cannot be read or written; the message names file, cause and remedy
     */
    Outcome run(Call call) throws IOException;
}
