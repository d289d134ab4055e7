// SPDX-License-Identifier: EPL-2.0
package punchwright.benchmarks.layout;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** Finds and reads instance files of any of the known forms. */
final class Instances {

    private Instances() {
    }

    /** The file itself, or the files of a folder and its folders that may hold instances, in the order of their names. */
    static List<Path> files(Path path) throws IOException {
        if (!Files.isDirectory(path)) {
            return List.of(path);
        }
        try (Stream<Path> all = Files.walk(path)) {
            return all.filter(Files::isRegularFile).filter(Instances::maybe)
                    .sorted(Comparator.comparing((Path p) -> inOrder(p.toString()))).toList();
        }
    }

    private static boolean maybe(Path file) {
        String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
        return name.endsWith(".json") || name.endsWith(".xml") || name.endsWith(".txt");
    }

    /** Numbers in front of zeros, so that 2 comes before 10. */
    private static String inOrder(String name) {
        StringBuilder out = new StringBuilder();
        for (String s : name.split("(?<=\\D)(?=\\d)|(?<=\\d)(?=\\D)")) {
            out.append(!s.isEmpty() && Character.isDigit(s.charAt(0)) && s.length() < 12 ? "0".repeat(12 - s.length()) + s : s);
        }
        return out.toString();
    }

    /** All instances of a file. @throws IOException saying what is wrong with it */
    static List<Instance> read(Path file) throws IOException {
        try {
            String text = Files.readString(file).strip();
            text = text.startsWith("\uFEFF") ? text.substring(1).strip() : text;
            if (text.isEmpty()) {
                throw new IOException(file + " is empty");
            }
            return switch (text.charAt(0)) {
                case '{', '[' -> json(JsonParser.parseString(text), file);
                case '<' -> List.of(NestingXml.read(text, bare(file)));
                default -> lines(text, file);
            };
        } catch (NoSuchFileException e) {
            throw new IOException(file + " does not exist", e);
        } catch (MalformedInputException e) {
            throw new IOException(file + " is no text file; known forms are JSON, XML and lines"
                    + " name;kinds;width;height;w,h[,n];...", e);
        } catch (RuntimeException e) {
            throw new IOException(file + " is not an instance of a known form: " + e.getMessage(), e);
        }
    }

    private static List<Instance> json(JsonElement json, Path file) {
        List<Instance> out = new ArrayList<>();
        if (json.isJsonArray()) {
            json.getAsJsonArray().forEach(e -> out.add(one(e.getAsJsonObject(), file)));
        } else {
            out.add(one(json.getAsJsonObject(), file));
        }
        return out;
    }

    private static Instance one(JsonObject json, Path file) {
        JsonElement items = Fields.need(json, "items");
        if (!items.isJsonArray() || items.getAsJsonArray().isEmpty()) {
            throw new IllegalArgumentException("items is no list, or empty");
        }
        JsonObject first = items.getAsJsonArray().get(0).getAsJsonObject();
        Path folder = file.toAbsolutePath().getParent();
        return Fields.find(first, "polygon", "shape") != null ? StripJson.read(json, bare(file))
                : BinInstance.ofJson(json, folder == null ? "" : folder.getFileName().toString(), bare(file));
    }

    private static String bare(Path file) {
        return file.getFileName().toString().replaceAll("\\.[^.]*$", "");
    }

    private static List<Instance> lines(String text, Path file) throws IOException {
        List<Instance> out = new ArrayList<>();
        int number = 0;
        for (String line : text.split("\\R")) {
            number++;
            if (!line.isBlank() && !line.startsWith("#")) {
                try {
                    out.add(BinInstance.ofLine(line.strip()));
                } catch (IllegalArgumentException | IndexOutOfBoundsException | ArithmeticException e) {
                    throw new IOException(file + ", line " + number + ", is not name;kinds;width;height;w,h[,n];...: "
                            + e.getMessage(), e);
                }
            }
        }
        return out;
    }
}
