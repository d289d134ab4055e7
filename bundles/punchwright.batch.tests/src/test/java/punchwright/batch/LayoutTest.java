// SPDX-License-Identifier: EPL-2.0
package punchwright.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import punchwright.planner.operations.ExitCode;

/** {@code layout} on a copy of the demo shop with one small order; what is kept is planned and drawn as it is. */
class LayoutTest {

    private static final JsonObject SCHEMA = RecordSchema.of("layout").orElseThrow();

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

    private JsonObject record() {
        return JsonParser.parseString(shell.out()).getAsJsonObject();
    }

    private static JsonArray layouts(JsonObject record) {
        return record.getAsJsonArray("sheets").get(0).getAsJsonObject().getAsJsonArray("layouts");
    }

    private String order() throws IOException {
        return Files.readString(shop.resolve("orders/T-1.pworder"));
    }

    @Test
    void theRecordKeepsToItsSchemaAndMakesWhatIsOrdered() {
        assertEquals(ExitCode.GOOD.number(), run("layout", "T-1", "--machine", "P1", "--json"), shell.err());
        List<String> wrong = new ArrayList<>();
        ImportRecordSchemaTest.check("record", record(), SCHEMA, wrong);
        assertEquals(List.of(), wrong);
        JsonObject layout = layouts(record()).get(0).getAsJsonObject();
        assertEquals(3, layout.get("runs").getAsInt() * layout.getAsJsonArray("pieces").size());
        JsonObject cost = layout.getAsJsonObject("cost");
        assertEquals(cost.get("total").getAsDouble(), cost.get("material").getAsDouble() - cost.get("remnants").getAsDouble()
                - cost.get("scrap").getAsDouble() + cost.get("handling").getAsDouble() + cost.get("machine").getAsDouble(), 1e-9);
        JsonObject sheets = record().getAsJsonArray("sheets").get(0).getAsJsonObject();
        assertTrue(sheets.get("boundMm2").getAsDouble() <= sheets.get("areaMm2").getAsDouble() + 1e-6);
        theTableNamesStockPiecesAndBound();
    }

    private void theTableNamesStockPiecesAndBound() {
        assertEquals(ExitCode.GOOD.number(), run("layout", "T-1", "--machine", "P1", "--seconds", "5"), shell.err());
        assertTrue(shell.out().contains("3 x GS-150"), shell.out());
        assertTrue(shell.out().contains("bound ") && shell.out().contains("stock st-s235-3"), shell.out());
        assertFalse(Files.exists(shop.resolve("orders/T-1.pworder.bak")), "nothing is kept unless asked");
    }

    @Test
    void whatIsKeptStaysAndIsPlannedAndDrawnAsItIs() throws IOException {
        assertEquals(ExitCode.GOOD.number(), run("layout", "T-1", "--machine", "P1", "--keep", "--web", "21.5"), shell.err());
        String kept = order();
        assertEquals(3, kept.lines().filter(l -> l.contains("<placements")).count(), kept);
        assertTrue(kept.contains("webMm=\"21.5\""), kept);
        assertEquals(ExitCode.GOOD.number(), run("layout", "T-1", "--machine", "P1", "--keep"), shell.err());
        assertEquals(kept, order(), "what is kept already makes everything");

        assertEquals(ExitCode.GOOD.number(), run("plan", "T-1", "--machine", "P1"), shell.err());
        String plan = Files.readString(shop.resolve("plans/plan-T-1-P1.pwplan"));
        String lastX = kept.replaceAll("(?s).*<placements[^>]*xMm=\"([^\"]+)\".*", "$1");
        assertTrue(plan.contains("xMm=\"" + lastX + "\""), "x " + lastX + " of the last arranged piece");

        assertEquals(ExitCode.GOOD.number(), run("draw", "T-1", "--to", folder.toString()), shell.err());
        List<String> files = shell.out().lines().toList();
        assertEquals(2, files.size(), files.toString());
        assertTrue(files.get(0).endsWith("layout-T-1-arranged-layout-1.dxf"), files.get(0));
        assertEquals(Files.readString(Path.of(files.get(1))), Files.readString(Path.of(files.get(0))), "the same drawing");
        whatArrangedLayoutsDoNotMakeIsLaidOutBesideThem(Double.parseDouble(lastX));
    }

    private void whatArrangedLayoutsDoNotMakeIsLaidOutBesideThem(double lastX) throws IOException {
        Files.writeString(shop.resolve("orders/T-1.pworder"), order().replace("quantity=\"3\"", "quantity=\"60\""));
        assertEquals(ExitCode.GOOD.number(), run("layout", "T-1", "--machine", "P1", "--json"), shell.err());
        JsonArray arranged = layouts(record()).get(0).getAsJsonObject().getAsJsonArray("pieces");
        assertEquals(lastX, arranged.get(2).getAsJsonObject().get("xMm").getAsDouble(), "the arranged sheet stays as it is");
        int made = 0;
        for (var layout : layouts(record())) {
            made += layout.getAsJsonObject().get("runs").getAsInt() * layout.getAsJsonObject().getAsJsonArray("pieces").size();
        }
        assertEquals(60, made);
    }

    @Test
    void anArrangedLayoutThatFailsTheCheckIsAFindingWithTheWayOut() throws IOException {
        assertEquals(ExitCode.GOOD.number(), run("layout", "T-1", "--machine", "P1", "--keep"), shell.err());
        String spoilt = order().replaceFirst("(<placements[^>]*)xMm=\"[^\"]+\"", "$1xMm=\"-40.0\"");
        Files.writeString(shop.resolve("orders/T-1.pworder"), spoilt);
        assertEquals(ExitCode.FINDINGS.number(), run("plan", "T-1", "--machine", "P1"), shell.out());
        assertTrue(shell.err().contains("PLANNING-KEPT-LAYOUT") && shell.err().contains("Move the piece"), shell.err());
        assertEquals(ExitCode.FINDINGS.number(), run("layout", "T-1", "--machine", "P1"), shell.out());
        assertEquals(ExitCode.GOOD.number(), run("layout", "T-1", "--machine", "P1", "--anew", "--keep"), shell.err());
        assertFalse(order().contains("xMm=\"-40.0\""), "made anew");
    }

    /** What fills up takes no sheet of its own, and the order's cost counts what is made. */
    @Test
    void fillersGoIntoRoomThatIsThereAnyway() throws IOException {
        SmallOrder.write(shop, 3, " received=\"2026-11-02\"");
        assertEquals(ExitCode.GOOD.number(), run("layout", "T-1", "--machine", "P1", "--json"), shell.err());
        int sheets = layouts(record()).get(0).getAsJsonObject().get("runs").getAsInt();
        Files.writeString(shop.resolve("orders/T-1.pworder"), order().replace("</work:Order>",
                "  <lines id=\"T-1-20\" quantity=\"5000\" want=\"FILLER\"><item xsi:type=\"work:Part\" "
                + "href=\"../parts/gusset-150.pwpart#gusset-150\"/></lines>\n</work:Order>"));
        assertEquals(ExitCode.GOOD.number(), run("layout", "T-1", "--machine", "P1", "--json"), shell.err());
        JsonObject layout = layouts(record()).get(0).getAsJsonObject();
        assertEquals(1, layouts(record()).size());
        assertEquals(sheets, layout.get("runs").getAsInt());
        assertTrue(layout.getAsJsonArray("pieces").size() > 3 && layout.getAsJsonArray("pieces").size() < 5000);
    }

    @Test
    void wrongWordsAreRefused() {
        assertEquals(ExitCode.USAGE.number(), run("layout"));
        assertEquals(ExitCode.USAGE.number(), run("layout", "T-1", "--seconds", "0"));
        assertEquals(ExitCode.INPUT.number(), run("layout", "NOWHERE"));
        assertTrue(shell.err().contains("NOWHERE"), shell.err());
    }
}
