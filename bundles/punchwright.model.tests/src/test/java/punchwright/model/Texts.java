// SPDX-License-Identifier: EPL-2.0
package punchwright.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.io.InputStream;
import java.util.Properties;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Checks that two property files say the same things in two languages. */
public final class Texts {

    private static final Pattern PLACEHOLDER = Pattern.compile("\\{(\\d+)[^}]*}");

    private Texts() {
    }

    public static Properties load(String resource) {
        Properties properties = new Properties();
        try (InputStream in = Texts.class.getResourceAsStream(resource)) {
            properties.load(in);
        } catch (IOException | NullPointerException e) {
            throw new IllegalStateException("No texts at " + resource, e);
        }
        return properties;
    }

    /** Same keys, same placeholders, nothing empty. */
    public static void assertAlike(String english, String german) {
        Properties en = load(english);
        Properties de = load(german);
        assertEquals(new TreeSet<>(en.stringPropertyNames()), new TreeSet<>(de.stringPropertyNames()));
        for (String key : en.stringPropertyNames()) {
            assertEquals(placeholders(en.getProperty(key)), placeholders(de.getProperty(key)), key);
            assertFalse(de.getProperty(key).isBlank(), key);
        }
    }

    private static TreeSet<String> placeholders(String text) {
        TreeSet<String> found = new TreeSet<>();
        Matcher matcher = PLACEHOLDER.matcher(text);
        while (matcher.find()) {
            found.add(matcher.group(1));
        }
        return found;
    }
}
