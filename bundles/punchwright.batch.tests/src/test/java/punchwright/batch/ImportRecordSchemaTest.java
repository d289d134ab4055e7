// SPDX-License-Identifier: EPL-2.0
package punchwright.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The record of a drawing has the names and types that the published schema promises, no more and no fewer. */
class ImportRecordSchemaTest {

    private static final JsonObject SCHEMA = RecordSchema.of("import").orElseThrow();

    @TempDir
    private Path folder;

    private final Shell shell = new Shell();

    /**
     * A plate with a row of five holes, a bend line, a centre line, a frozen layer, a text, a point, a filled area and an open
     * line.
     */
    private static String drawing() {
        StringBuilder t = new StringBuilder("0 SECTION|2 HEADER|9 $ACADVER|1 AC1009|9 $INSUNITS|70 4|0 ENDSEC|0 SECTION|2 TABLES"
                + "|0 TABLE|2 LAYER|0 LAYER|2 ICE|70 1|62 7|0 ENDTAB|0 ENDSEC|0 SECTION|2 ENTITIES"
                + "|0 POLYLINE|8 0|66 1|70 1|0 VERTEX|10 0|20 0|0 VERTEX|10 200|20 0"
                + "|0 VERTEX|10 200|20 100|0 VERTEX|10 0|20 100|0 SEQEND");
        for (int i = 0; i < 5; i++) {
            t.append("|0 CIRCLE|8 0|10 ").append(20 + 20 * i).append("|20 50|40 4");
        }
        return t.append("|0 LINE|8 BEND|10 0|20 80|11 200|21 80|0 LINE|8 CENTER|10 0|20 50|11 200|21 50"
                + "|0 CIRCLE|8 ICE|10 150|20 50|40 9"
                + "|0 TEXT|8 MARK|10 10|20 10|40 5|1 Nr 7|0 POINT|8 0|10 150|20 50"
                + "|0 SOLID|8 0|10 1|20 1|11 5|21 1|12 1|22 5|13 5|23 5"
                + "|0 LINE|8 0|10 150|20 20|11 160|21 30|0 ENDSEC|0 EOF").toString().replaceAll("\\|?(\\d+) ([^|]*)", "$1\n$2\n");
    }

    private JsonObject record() throws IOException {
        Path file = Files.writeString(folder.resolve("plate.dxf"), drawing());
        shell.run("import", "--json", "--quiet", file.toString());
        return JsonParser.parseString(shell.out()).getAsJsonObject();
    }

    @Test
    void aFullRecordKeepsToTheSchemaAndUsesAllOfIt() throws IOException {
        JsonObject record = record();
        List<String> wrong = new ArrayList<>();
        check("record", record, SCHEMA, wrong);
        assertEquals(List.of(), wrong);
        Set<String> unused = new TreeSet<>(SCHEMA.getAsJsonObject("properties").keySet());
        unused.removeAll(record.keySet());
        assertEquals(Set.of(), unused);
    }

    @Test
    void figuresCountWhatTheyPromise() throws IOException {
        JsonObject r = record();
        assertEquals(7, r.get("closedLoops").getAsInt()); // outline, five holes, frozen circle
        assertEquals(3, r.get("openChains").getAsInt()); // bend line, centre line, loose line
        assertEquals(6, r.getAsJsonObject("visibleLayersOnly").get("closedLoops").getAsInt());
        assertEquals(9, r.getAsJsonObject("visibleLayersOnly").get("cutEntities").getAsInt());
        assertEquals(6, r.getAsJsonObject("toBeMade").get("closedLoops").getAsInt());
        assertEquals("frozen", r.getAsJsonObject("layers").getAsJsonObject("ICE").get("state").getAsString());
        assertEquals("bend_line", r.getAsJsonObject("layers").getAsJsonObject("BEND").get("meaning").getAsString());
        JsonObject notCut = r.getAsJsonObject("notCut");
        assertEquals(Set.of("bendLine", "centreLine", "frozen", "filledArea"), notCut.keySet());
        assertEquals(200, notCut.getAsJsonObject("bendLine").get("lengthMm").getAsDouble(), 1e-9);
        assertEquals(18 * Math.PI, notCut.getAsJsonObject("frozen").get("lengthMm").getAsDouble(), 1e-9);
        JsonObject part = r.getAsJsonArray("parts").get(0).getAsJsonObject();
        assertEquals("row", part.getAsJsonArray("patterns").get(0).getAsJsonObject().get("kind").getAsString());
        assertEquals(1, part.getAsJsonArray("features").get(0).getAsJsonObject().get("pattern").getAsInt());
    }

    @Test
    void theHelpNamesTheRecord() {
        shell.run("import", "--help");
        SCHEMA.getAsJsonObject("properties").keySet().forEach(n -> assertTrue(shell.out().contains("  " + n + " "), n));
    }

    static void check(String where, JsonElement value, JsonObject schema, List<String> wrong) {
        String type = schema.get("type").getAsString();
        boolean fits = switch (type) {
            case "object" -> value.isJsonObject();
            case "array" -> value.isJsonArray();
            case "string" -> value.isJsonPrimitive() && value.getAsJsonPrimitive().isString();
            case "boolean" -> value.isJsonPrimitive() && value.getAsJsonPrimitive().isBoolean();
            case "integer" -> value.isJsonPrimitive() && value.getAsDouble() == Math.rint(value.getAsDouble());
            default -> value.isJsonPrimitive() && value.getAsJsonPrimitive().isNumber();
        };
        if (!fits) {
            wrong.add(where + " is no " + type);
        } else if (type.equals("array")) {
            value.getAsJsonArray().forEach(v -> check(where + "[]", v, schema.getAsJsonObject("items"), wrong));
        } else if (type.equals("object")) {
            members(where, value.getAsJsonObject(), schema, wrong);
        }
    }

    private static void members(String where, JsonObject value, JsonObject schema, List<String> wrong) {
        JsonObject known = schema.has("properties") ? schema.getAsJsonObject("properties") : new JsonObject();
        if (schema.has("required")) {
            schema.getAsJsonArray("required").forEach(n -> {
                if (!value.has(n.getAsString())) {
                    wrong.add(where + " has no " + n.getAsString());
                }
            });
        }
        value.entrySet().forEach(e -> {
            JsonElement other = schema.get("additionalProperties");
            if (known.has(e.getKey())) {
                check(where + "." + e.getKey(), e.getValue(), known.getAsJsonObject(e.getKey()), wrong);
            } else if (other.isJsonObject()) {
                check(where + "." + e.getKey(), e.getValue(), other.getAsJsonObject(), wrong);
            } else {
                wrong.add(where + " has an unknown " + e.getKey());
            }
        });
    }
}
