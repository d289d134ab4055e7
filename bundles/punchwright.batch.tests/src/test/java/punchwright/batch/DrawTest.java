// SPDX-License-Identifier: EPL-2.0
package punchwright.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import punchwright.planner.operations.ExitCode;

/** {@code draw} on a copy of the demo shop with one small order: what is written is read back and measured. */
class DrawTest {

    @TempDir
    private Path folder;

    private Path shop;
    private Shell shell;
    private OrderShop orders;

    @BeforeEach
    void copyTheDemoShop() throws IOException {
        orders = new OrderShop(folder);
        shop = orders.folder();
        shell = orders.shell();
    }

    private int run(String... words) {
        return orders.run(words);
    }

    private static JsonObject read(Path drawing) {
        Shell other = new Shell();
        assertEquals(ExitCode.GOOD.number(), other.run("import", "--json", "--quiet", drawing.toString()), other.err());
        return JsonParser.parseString(other.out()).getAsJsonObject();
    }

    @Test
    void aPartReadsBackAsItsOwnDrawing() {
        assertEquals(ExitCode.GOOD.number(), run("draw", "GS-150", "--to", folder.toString()), shell.err());
        Path written = folder.resolve("part-GS-150.dxf");
        assertEquals(written.toString(), shell.out().strip());
        JsonObject own = read(shop.resolve("drawings/gusset-150.dxf")).getAsJsonObject("toBeMade");
        JsonObject back = read(written);
        assertEquals(own.get("areaMm2").getAsDouble(), back.get("areaMm2").getAsDouble(), 1e-6);
        assertEquals(own.get("cutLengthMm").getAsDouble(), back.get("cutLengthMm").getAsDouble(), 1e-6);
        assertEquals("AC1009", back.get("acadVersion").getAsString());
    }

    @Test
    void theLayoutsOfAnOrderShowEveryPieceOnItsSheet() throws IOException {
        assertEquals(ExitCode.GOOD.number(), run("plan", "T-1", "--machine", "P1"), shell.err());
        Shell drawn = new Shell();
        int code = drawn.run("--workspace", shop.toString(), "draw", "T-1", "--to", folder.toString());
        assertEquals(ExitCode.GOOD.number(), code, drawn.err());
        Path layout = folder.resolve("layout-T-1-P1-1.dxf");
        assertEquals(List.of(layout.toString()), drawn.out().lines().toList());
        JsonObject back = read(layout);
        assertTrue(back.getAsJsonObject("layers").keySet().containsAll(List.of("CUT", "SHEET")), back.get("layers").toString());
        double part = read(shop.resolve("drawings/gusset-150.dxf")).getAsJsonObject("toBeMade").get("cutLengthMm").getAsDouble();
        assertEquals(3 * part, back.getAsJsonObject("layers").getAsJsonObject("CUT").get("cutLengthMm").getAsDouble(), 1e-6);

        assertEquals(ExitCode.GOOD.number(), run("draw", "T-1", "--form", "svg", "--to", folder.toString()), shell.err());
        String svg = Files.readString(folder.resolve("layout-T-1-P1-1.svg"));
        assertEquals(4, svg.lines().filter(l -> l.contains("<path")).count());
    }

    @Test
    void whatCannotBeDrawnIsNamedWithTheWayOut() throws IOException {
        assertEquals(ExitCode.INPUT.number(), run("draw", "NOWHERE"));
        assertTrue(shell.err().contains("NOWHERE"), shell.err());
        assertEquals(ExitCode.INPUT.number(), run("draw", "T-1"));
        assertEquals(ExitCode.USAGE.number(), run("draw", "GS-150", "--form", "pdf"));
        assertEquals(ExitCode.USAGE.number(), run("draw"));
        Path blocked = Files.writeString(folder.resolve("file"), "x");
        assertEquals(ExitCode.INPUT.number(), run("draw", "GS-150", "--to", blocked.resolve("sub").toString()));
        assertTrue(shell.err().contains("--to"), shell.err());
        assertFalse(Files.exists(folder.resolve("part-GS-150.dxf")));
    }
}
