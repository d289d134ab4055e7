// SPDX-License-Identifier: EPL-2.0
package punchwright.benchmarks.layout;

import com.google.gson.JsonObject;
import com.google.gson.JsonParseException;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Reads instance files of any of the known forms. */
final class Instances {

    private Instances() {
    }

    /** All instances of a file, or of the files of a folder in the order of their names. */
    static List<Instance> read(Path path) throws IOException {
        List<Instance> out = new ArrayList<>();
        if (Files.isDirectory(path)) {
            try (Stream<Path> files = Files.list(path)) {
                for (Path file : files.filter(f -> f.toString().endsWith(".json")).sorted().toList()) {
                    out.addAll(read(file));
                }
            }
            return out;
        }
        String text = Files.readString(path);
        try {
            return text.stripLeading().startsWith("{") ? List.of(json(text, path)) : lines(text);
        } catch (JsonParseException | IllegalStateException | NullPointerException | IndexOutOfBoundsException
                | NumberFormatException e) {
            throw new IOException(path + " is not an instance of a known form: " + e.getMessage(), e);
        }
    }

    private static Instance json(String text, Path path) {
        JsonObject json = JsonParser.parseString(text).getAsJsonObject();
        Path folder = path.toAbsolutePath().getParent();
        return json.has("strip_width") ? StripInstance.ofJson(json)
                : BinInstance.ofJson(json, folder == null ? "" : folder.getFileName().toString());
    }

    private static List<Instance> lines(String text) {
        List<Instance> out = new ArrayList<>();
        text.lines().filter(l -> !l.isBlank()).forEach(l -> out.add(BinInstance.ofLine(l)));
        return out;
    }
}
