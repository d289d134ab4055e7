// SPDX-License-Identifier: EPL-2.0
package punchwright.model.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.Test;

/**
 * The contributor guide's table of rules is that of the code. When this fails, run {@link #main} (or the test with
 * {@code -Dpunchwright.guide=write}) and look at the difference.
 */
class RulesTableTest {

    private static final String BEGIN = "<!-- rules -->\n";
    private static final String END = "<!-- /rules -->";

    public static void main(String[] args) throws IOException {
        write();
    }

    private static Path guide() {
        Path folder = Path.of("").toAbsolutePath();
        while (folder != null && !Files.exists(folder.resolve("DEVELOPERS.md"))) {
            folder = folder.getParent();
        }
        assertTrue(folder != null, "DEVELOPERS.md is in no folder above " + Path.of("").toAbsolutePath());
        return folder.resolve("DEVELOPERS.md");
    }

    private static void write() throws IOException {
        String text = Files.readString(guide());
        int from = text.indexOf(BEGIN) + BEGIN.length();
        Files.writeString(guide(), text.substring(0, from) + Rules.asMarkdown() + text.substring(text.indexOf(END)));
    }

    @Test
    void theGuideShowsTheRulesOfTheCode() throws IOException {
        if ("write".equals(System.getProperty("punchwright.guide"))) {
            write();
        }
        String text = Files.readString(guide());
        assertTrue(text.contains(BEGIN) && text.contains(END), "The guide has no place for the rules");
        assertEquals(Rules.asMarkdown(), text.substring(text.indexOf(BEGIN) + BEGIN.length(), text.indexOf(END)));
    }
}
