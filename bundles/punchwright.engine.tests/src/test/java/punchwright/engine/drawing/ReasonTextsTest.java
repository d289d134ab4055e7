// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.io.InputStream;
import java.util.HashSet;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

import punchwright.engine.drawing.contour.ContourReason;
import punchwright.engine.drawing.dxf.DxfReason;
import punchwright.engine.feature.FeatureReason;
import punchwright.engine.finding.Reason;

/** Every reason has its texts in both languages, with the same placeholders. */
class ReasonTextsTest {

    private static final List<Reason[]> ALL = List.of(DrawingReason.values(), DxfReason.values(), ContourReason.values(),
            FeatureReason.values());

    private static Properties texts(Reason reason, String suffix) throws IOException {
        Properties texts = new Properties();
        try (InputStream in = reason.getClass().getResourceAsStream("findings" + suffix + ".properties")) {
            texts.load(new java.io.InputStreamReader(in, java.nio.charset.StandardCharsets.UTF_8));
        }
        return texts;
    }

    private static Set<String> placeholders(String text) {
        Set<String> found = new TreeSet<>();
        Matcher m = Pattern.compile("\\{(\\d+)").matcher(text);
        while (m.find()) {
            found.add(m.group(1));
        }
        return found;
    }

    @Test
    void bothLanguagesHaveAllTexts() throws IOException {
        for (Reason[] reasons : ALL) {
            Properties english = texts(reasons[0], "");
            Properties german = texts(reasons[0], "_de");
            Set<String> keys = new HashSet<>();
            for (Reason r : reasons) {
                for (String kind : List.of(".message", ".remedy")) {
                    String key = r.code() + kind;
                    keys.add(key);
                    assertFalse(english.getProperty(key, "").isEmpty(), key);
                    assertFalse(german.getProperty(key, "").isEmpty(), key);
                    assertEquals(placeholders(english.getProperty(key)), placeholders(german.getProperty(key)), key);
                }
            }
            assertEquals(keys, english.stringPropertyNames());
            assertEquals(keys, german.stringPropertyNames());
        }
    }

    @Test
    void codesAreUnique() {
        List<String> codes = ALL.stream().flatMap(Stream::of).map(Reason::code).toList();
        assertEquals(codes.size(), new HashSet<>(codes).size());
    }
}
