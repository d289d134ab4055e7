// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.Collections;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What the engineer wants of the choice of tools.
 *
 * @param forbidden ids of tools not to be used
 * @param pinned    feature number to the id of the tool that must take part in making it
 */
public record ToolWishes(Set<String> forbidden, Map<Integer, String> pinned) {

    public static final ToolWishes NONE = new ToolWishes(Set.of(), Map.of());

    public ToolWishes {
        forbidden = Collections.unmodifiableSet(new TreeSet<>(forbidden));
        pinned = Collections.unmodifiableMap(new TreeMap<>(pinned));
    }
}
