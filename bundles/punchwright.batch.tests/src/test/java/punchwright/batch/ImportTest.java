// SPDX-License-Identifier: EPL-2.0
package punchwright.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import punchwright.planner.operations.ExitCode;

/** Drawings from the command line, as text and as JSON lines. */
class ImportTest {

    /** A plate 100 x 50 with a hole of 20 in the middle, drawn by hand. */
    private static final String PLATE = String.join("\n", "0", "SECTION", "2", "HEADER", "9", "$ACADVER", "1", "AC1009", "9",
            "$INSUNITS", "70", "4", "0", "ENDSEC", "0", "SECTION", "2", "ENTITIES", "0", "LINE", "8", "0", "10", "0", "20", "0",
            "11", "100", "21", "0", "0", "LINE", "8", "0", "10", "100", "20", "0", "11", "100", "21", "50", "0", "LINE", "8",
            "0", "10", "100", "20", "50", "11", "0", "21", "50", "0", "LINE", "8", "0", "10", "0", "20", "50", "11", "0", "21",
            "0", "0", "CIRCLE", "8", "0", "10", "50", "20", "25", "40", "10", "0", "ENDSEC", "0", "EOF", "");

    @TempDir
    private Path folder;

    private final Shell shell = new Shell();

    @Test
    void jsonTellsOneObjectALineWithTheFiguresOfTheDrawing() throws IOException {
        Path file = Files.writeString(folder.resolve("plate.dxf"), PLATE);

        assertEquals(ExitCode.GOOD.number(), shell.run("import", "--json", "--quiet", file.toString()), shell.err());

        List<String> lines = shell.out().lines().toList();
        assertEquals(1, lines.size());
        JsonObject plate = JsonParser.parseString(lines.get(0)).getAsJsonObject();
        assertEquals(file.toString(), plate.get("file").getAsString());
        assertEquals(1.0, plate.get("mmPerUnit").getAsDouble());
        assertEquals(2, plate.get("closedLoops").getAsInt());
        assertEquals(0, plate.get("openChains").getAsInt());
        assertEquals(4, plate.getAsJsonObject("entities").get("LINE").getAsInt());
        assertEquals(20.0, plate.getAsJsonArray("circleDiametersMm").get(0).getAsDouble(), 1e-9);
        assertEquals(100 * 50 - Math.PI * 100, plate.get("areaMm2").getAsDouble(), 1e-6);
        assertEquals(300 + Math.PI * 20, plate.get("cutLengthMm").getAsDouble(), 1e-6);
        JsonArray features = plate.getAsJsonArray("parts").get(0).getAsJsonObject().getAsJsonArray("features");
        assertEquals("round", features.get(0).getAsJsonObject().get("kind").getAsString());
        assertEquals(5, features.size());
    }

    @Test
    void aFolderIsReadInTheOrderOfNamesAndABadFileDoesNotHideTheGoodOnes() throws IOException {
        Files.writeString(folder.resolve("b.dxf"), PLATE);
        Files.writeString(folder.resolve("a.dxf"), "not a drawing");

        assertEquals(ExitCode.INPUT.number(), shell.run("import", "--json", "--quiet", folder.toString()));

        List<String> lines = shell.out().lines().toList();
        assertEquals(2, lines.size());
        JsonObject bad = JsonParser.parseString(lines.get(0)).getAsJsonObject();
        assertTrue(bad.get("file").getAsString().endsWith("a.dxf"));
        assertTrue(!bad.getAsJsonArray("findings").isEmpty());
        assertEquals(2, JsonParser.parseString(lines.get(1)).getAsJsonObject().get("closedLoops").getAsInt());
        assertTrue(shell.err().contains("a.dxf"), shell.err());
    }

    @Test
    void aDrawingWithoutAnythingToCutSaysSoAsAnError() throws IOException {
        Path file = Files.writeString(folder.resolve("note.dxf"), String.join("\n", "0", "SECTION", "2", "ENTITIES", "0", "TEXT",
                "8", "0", "10", "5", "20", "5", "40", "3", "1", "nothing to cut", "0", "ENDSEC", "0", "EOF", ""));

        assertEquals(ExitCode.INPUT.number(), shell.run("import", "--json", "--quiet", file.toString()));

        JsonArray findings = JsonParser.parseString(shell.out()).getAsJsonObject().getAsJsonArray("findings");
        assertEquals("error", findings.get(0).getAsJsonObject().get("severity").getAsString());
        assertTrue(!findings.get(0).getAsJsonObject().get("remedy").getAsString().isEmpty());
    }
}
