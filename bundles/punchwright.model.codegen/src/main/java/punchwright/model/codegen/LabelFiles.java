// SPDX-License-Identifier: EPL-2.0
package punchwright.model.codegen;

import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Writes the property files of the item providers from the model's names, so that a thing is called the same in forms and in
 * messages.
 *
 * <p>Input: the property file that EMF generated, for its keys, and {@code names.properties}, {@code names_de.properties} and
 * {@code units.properties} of the model. Where a name is missing, the technical name stands in its place and the build says so;
 * a test of the model fails then.</p>
 */
final class LabelFiles {

    private static final Pattern TYPE = Pattern.compile("_UI_(\\w+)_type");
    private static final Pattern FEATURE = Pattern.compile("_UI_([A-Za-z0-9]+)_(\\w+)_feature");
    private static final Pattern LITERAL = Pattern.compile("_UI_([A-Za-z0-9]+)_(\\w+)_literal");
    private static final String FIXED = "/punchwright/model/codegen/fixed";

    private final Path names;
    private final Properties units;
    private final List<String> missing = new ArrayList<>();

    LabelFiles(Path namesFolder) throws IOException {
        this.names = namesFolder;
        this.units = load(namesFolder.resolve("units.properties"));
    }

    /** Writes plugin.properties and its translations into a folder. */
    void write(Path generated, Path target) throws IOException {
        Properties keys = load(generated);
        for (String language : List.of("", "_de")) {
            Properties texts = load(names.resolve("names" + language + ".properties"));
            Properties fixed = new Properties();
            try (InputStream in = LabelFiles.class.getResourceAsStream(FIXED + language + ".properties")) {
                fixed.load(in);
            }
            TreeMap<String, String> labels = new TreeMap<>();
            for (String key : keys.stringPropertyNames()) {
                labels.put(key, fixed.containsKey(key) ? fixed.getProperty(key) : label(key, texts, language));
            }
            Files.writeString(target.resolve("plugin" + language + ".properties"), text(labels), StandardCharsets.ISO_8859_1);
        }
        if (!missing.isEmpty()) {
            System.out.println("Names missing in " + names + ": " + missing);
        }
    }

    private String label(String key, Properties texts, String language) {
        Matcher feature = FEATURE.matcher(key);
        if (feature.matches()) {
            String unit = unit(feature.group(2));
            String name = texts.getProperty(feature.group(1) + "." + feature.group(2), texts.getProperty(feature.group(2)));
            return required(name, feature.group(2), language) + (unit.isEmpty() ? "" : " [" + unit + "]");
        }
        Matcher literal = LITERAL.matcher(key);
        if (literal.matches()) {
            return required(texts.getProperty(literal.group(2)), literal.group(2), language);
        }
        Matcher type = TYPE.matcher(key);
        return type.matches() ? required(texts.getProperty(type.group(1)), type.group(1), language) : required(null, key,
                language);
    }

    private String required(String name, String key, String language) {
        if (name == null) {
            missing.add(key + language);
            return key;
        }
        return name;
    }

    private String unit(String feature) {
        for (int start = 0; start < feature.length(); start++) {
            if (units.containsKey(feature.substring(start))) {
                return units.getProperty(feature.substring(start));
            }
        }
        return "";
    }

    private static String text(TreeMap<String, String> labels) {
        StringBuilder text = new StringBuilder("# SPDX-License-Identifier: EPL-2.0\n# Generated from the model's names.\n");
        labels.forEach((key, label) -> text.append(key).append(" = ").append(escaped(label)).append('\n'));
        return text.toString();
    }

    private static String escaped(String label) {
        StringBuilder text = new StringBuilder();
        for (char c : label.toCharArray()) {
            text.append(c < 128 ? String.valueOf(c) : String.format("\\u%04x", (int) c));
        }
        return text.toString();
    }

    private static Properties load(Path file) throws IOException {
        Properties properties = new Properties();
        try (Reader in = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            properties.load(in);
        }
        return properties;
    }
}
