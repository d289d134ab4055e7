// SPDX-License-Identifier: EPL-2.0
package punchwright.batch;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

/** The JSON schemas of what operations print with {@code --json}: files NAME-record.schema.json beside this class. */
final class RecordSchema {

    private RecordSchema() {
    }

    /** Empty for an operation whose records have no schema. */
    static Optional<JsonObject> of(String operation) {
        try (InputStream in = RecordSchema.class.getResourceAsStream(operation + "-record.schema.json")) {
            return in == null ? Optional.empty()
                    : Optional.of(JsonParser.parseReader(new InputStreamReader(in, StandardCharsets.UTF_8)).getAsJsonObject());
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /** A line for each name of a record, for the help; empty without a schema. */
    static String described(String operation) {
        StringBuilder text = new StringBuilder();
        of(operation).ifPresent(schema -> {
            text.append("\nWith --json one object a line:\n");
            for (Map.Entry<String, JsonElement> p : schema.getAsJsonObject("properties").entrySet()) {
                text.append(String.format("  %-18s %s%n", p.getKey(), p.getValue().getAsJsonObject().get("description")
                        .getAsString()));
            }
        });
        return text.toString();
    }
}
