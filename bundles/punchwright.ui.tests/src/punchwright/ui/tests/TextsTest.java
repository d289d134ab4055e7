// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Properties;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.eclipse.core.runtime.Platform;
import org.junit.jupiter.api.Test;

import punchwright.ui.theme.Icons;
import punchwright.ui.theme.Ink;

/** The texts of both languages have the same keys and placeholders, and every text, ink and icon that is named is there. */
class TextsTest {

    private static final String TEXTS = "/punchwright/ui/text/texts";
    private static final Pattern USED = Pattern.compile("Texts\\.of\\(\\s*\"([A-Za-z0-9.]+)\"[,)]");
    private static final Pattern PLACEHOLDER = Pattern.compile("\\{(\\d+)");

    private static URL entry(String path) {
        return Platform.getBundle("punchwright.ui").getResource(path);
    }

    private static Properties load(String path) throws IOException {
        Properties texts = new Properties();
        try (InputStream in = entry(path).openStream()) {
            texts.load(in);
        }
        assertFalse(texts.isEmpty(), path);
        return texts;
    }

    @Test
    void bothLanguagesHaveTheSameKeysAndPlaceholders() throws IOException {
        sameKeysAndPlaceholders(TEXTS);
        sameKeysAndPlaceholders("/plugin");
    }

    private static void sameKeysAndPlaceholders(String base) throws IOException {
        Properties english = load(base + ".properties");
        Properties german = load(base + "_de.properties");
        assertEquals(new TreeSet<>(english.keySet()), new TreeSet<>(german.keySet()));
        for (String key : english.stringPropertyNames()) {
            assertEquals(placeholders(english.getProperty(key)), placeholders(german.getProperty(key)), key);
        }
    }

    private static TreeSet<String> placeholders(String text) {
        return new TreeSet<>(PLACEHOLDER.matcher(text).results().map(m -> m.group(1)).toList());
    }

    @Test
    void everyTextThatTheSourceNamesIsThere() throws IOException {
        Properties english = load(TEXTS + ".properties");
        TreeSet<String> missing = new TreeSet<>();
        int seen = 0;
        try (Stream<Path> files = Files.walk(source())) {
            for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
                for (MatchResult use : USED.matcher(Files.readString(file)).results().toList()) {
                    seen++;
                    if (!english.containsKey(use.group(1))) {
                        missing.add(use.group(1));
                    }
                }
            }
        }
        assertTrue(seen > 80, "only " + seen + " uses of texts were found; is the source where the test looks?");
        assertEquals(new TreeSet<>(), missing);
    }

    private static Path source() {
        for (Path at = Path.of("").toAbsolutePath(); at != null; at = at.getParent()) {
            Path here = at.resolve("bundles/punchwright.ui/src");
            if (Files.isDirectory(here)) {
                return here;
            }
        }
        throw new IllegalStateException("No source of the workbench above " + Path.of("").toAbsolutePath());
    }

    @Test
    void everyInkIsAColourOfTheTheme() throws IOException {
        String plugin;
        try (InputStream in = entry("/plugin.xml").openStream()) {
            plugin = new String(in.readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
        }
        for (Ink ink : Ink.values()) {
            String value = ink.plain().red + "," + ink.plain().green + "," + ink.plain().blue;
            assertTrue(Pattern.compile("id=\"" + Pattern.quote(ink.key()) + "\"[^>]*value=\"" + value + "\"").matcher(plugin)
                    .find(), ink.key());
        }
    }

    @Test
    void everyIconHasItsFile() {
        for (Icons icon : Icons.values()) {
            assertTrue(entry("/" + icon.path()) != null, icon.path());
        }
    }
}
