// SPDX-License-Identifier: EPL-2.0
package punchwright.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Which bundle may know which: window and command line above, engine and model below, never the other way. */
class BundleDirectionsTest {

    private static final String OWN = "punchwright.";
    /** All that each bundle may require of ours. */
    private static final Map<String, Set<String>> ALLOWED = Map.of(
            "punchwright.engine", Set.of(),
            "punchwright.model", Set.of(),
            "punchwright.model.edit", Set.of("punchwright.model"),
            "punchwright.planner", Set.of("punchwright.engine", "punchwright.model"),
            "punchwright.sheets", Set.of("punchwright.model"),
            "punchwright.batch", Set.of("punchwright.engine", "punchwright.model", "punchwright.model.edit",
            "punchwright.planner", "punchwright.sheets"),
            "punchwright.ui", Set.of("punchwright.engine", "punchwright.model", "punchwright.model.edit", "punchwright.planner",
                    "punchwright.sheets"));
    /** Needs a display, or a workbench. */
    private static final Pattern WINDOW = Pattern.compile("org\\.eclipse\\.(swt|jface|ui|e4)(\\.|$)|org\\.eclipse\\.swtchart.*");
    private static final Pattern WINDOW_IMPORT =
            Pattern.compile("(?m)^import (?:static )?(org\\.eclipse\\.(?:swt|jface|ui|e4|swtchart)\\.\\S+);");

    static Set<String> bundles() {
        return Bundles.needs().keySet();
    }

    @Test
    void rulesKnowEveryBundle() {
        assertEquals(new TreeSet<>(ALLOWED.keySet()), new TreeSet<>(bundles()));
    }

    @ParameterizedTest
    @MethodSource("bundles")
    void requiresOnlyWhatLiesBelow(String bundle) {
        Set<String> own = new TreeSet<>(Bundles.needs().get(bundle));
        own.removeIf(name -> !name.startsWith(OWN));
        own.removeAll(ALLOWED.getOrDefault(bundle, Set.of()));
        assertEquals(Set.of(), own, bundle + " must not know these");
    }

    @Test
    void engineNeedsOnlyTheGeometryLibrary() {
        assertEquals(Set.of("org.locationtech.jts.jts-core", "org.ojalgo"), Bundles.needs().get("punchwright.engine"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"punchwright.model", "punchwright.model.edit", "punchwright.planner", "punchwright.sheets",
            "punchwright.batch"})
    void needsNoWindowInTheManifest(String bundle) {
        Set<String> window = new TreeSet<>(Bundles.needs().get(bundle));
        window.removeIf(name -> !WINDOW.matcher(name).find());
        assertEquals(Set.of(), window);
    }

    @ParameterizedTest
    @ValueSource(strings = {"punchwright.model", "punchwright.model.edit", "punchwright.planner", "punchwright.sheets",
            "punchwright.batch"})
    void importsNoWindowInTheSource(String bundle) {
        Map<?, String> sources = Bundles.sources(bundle);
        assertFalse(sources.isEmpty(), "no source of " + bundle + " was read");
        List<String> found = sources.entrySet().stream()
                .flatMap(e -> WINDOW_IMPORT.matcher(e.getValue()).results().map(m -> e.getKey() + ": " + m.group(1))).toList();
        assertEquals(List.of(), found);
    }
}
