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
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import punchwright.planner.operations.ExitCode;

/** {@code weigh} and {@code advise} on a copy of the demo shop with one small order. */
class WeighAndAdviseTest {

    @TempDir
    private Path shop;

    private final Shell shell = new Shell();

    @BeforeEach
    void copyTheDemoShop() throws IOException {
        DemoCopy.to(shop);
        try (Stream<Path> orders = Files.list(shop.resolve("orders"))) {
            for (Path o : orders.toList()) {
                Files.delete(o);
            }
        }
        SmallOrder.write(shop, 400, " received=\"2026-11-02\" dueDate=\"2026-12-02\"");
    }

    private int run(String... words) {
        return shell.run(Stream.concat(Stream.of("--workspace", shop.toString(), "--quiet"), Stream.of(words))
                .toArray(String[]::new));
    }

    private List<JsonObject> json() {
        return shell.out().lines().map(l -> JsonParser.parseString(l).getAsJsonObject()).toList();
    }

    private static void has(JsonObject o, String... names) {
        assertEquals(Set.of(names), o.keySet());
    }

    @Test
    void weighTellsTheWaysSideBySide() {
        assertEquals(ExitCode.GOOD.number(), run("weigh", "GS-150", "--machine", "P1", "--json"), shell.err());
        JsonObject w = json().getFirst();
        has(w, "part", "machine", "currency", "made", "free", "wished", "moreSeconds", "moreCost", "operations", "findings");
        has(w.getAsJsonObject("free"), "made", "seconds", "boundSeconds", "cost");
        assertTrue(w.get("made").getAsBoolean());
        assertEquals(0, w.get("moreSeconds").getAsDouble());
        for (JsonElement e : w.getAsJsonArray("operations")) {
            has(e.getAsJsonObject(), "features", "alternatives", "passedOver");
            has(e.getAsJsonObject().getAsJsonArray("features").get(0).getAsJsonObject(), "number", "kind", "text", "x", "y");
            JsonArray ways = e.getAsJsonObject().getAsJsonArray("alternatives");
            has(ways.get(0).getAsJsonObject(), "tools", "names", "hits", "seconds", "cost", "wear", "forcePercent", "reachMm",
                    "chosen",
                    "why");
            int chosen = 0;
            for (JsonElement way : ways) {
                chosen += way.getAsJsonObject().get("chosen").getAsBoolean() ? 1 : 0;
            }
            assertEquals(1, chosen);
            for (JsonElement f : e.getAsJsonObject().getAsJsonArray("passedOver")) {
                has(f.getAsJsonObject(), "code", "severity", "subject", "message", "remedy", "waysOut");
                assertFalse(f.getAsJsonObject().get("message").getAsString().isBlank());
            }
        }
    }

    /** With every tool forbidden: why, and as the way out one of them, in the table and as values. */
    @Test
    void whatCannotBeMadeIsToldWithItsReasonAndItsWayOut() throws IOException {
        List<String> words = new ArrayList<>(List.of("weigh", "GS-150", "--machine", "P1"));
        Pattern.compile("<tools id=\"([^\"]+)\"").matcher(Files.readString(shop.resolve("library.pwlib"))).results()
                .forEach(m -> words.addAll(List.of("--forbid", m.group(1))));
        run(words.toArray(String[]::new));
        List<String> lines = shell.out().lines().toList();
        int missing = 0;
        for (int i = 0; i + 1 < lines.size(); i++) {
            if (lines.get(i).equals("  no way to make it")) {
                missing++;
                String why = lines.get(i + 1);
                assertTrue(why.contains("is forbidden") && why.contains("It works with "), why);
            }
        }
        assertTrue(missing > 0, shell.out());
        words.add("--json");
        run(words.toArray(String[]::new));
        JsonObject weighed = JsonParser.parseString(shell.out().lines().reduce((a, b) -> b).orElseThrow()).getAsJsonObject();
        long allowed = weighed.getAsJsonArray("findings").asList().stream().map(JsonElement::getAsJsonObject)
                .filter(f -> f.get("code").getAsString().equals("TOOLING-NEEDS-FORBIDDEN"))
                .flatMap(f -> f.getAsJsonArray("waysOut").asList().stream()).map(JsonElement::getAsJsonObject)
                .filter(w -> w.get("kind").getAsString().equals("allow") && w.get("id").getAsString().startsWith("T-")).count();
        assertTrue(allowed > 0, shell.out());
    }

    @Test
    void aBanCostsNoLessAndIsSaid() {
        assertEquals(ExitCode.GOOD.number(), run("weigh", "GS-150", "--machine", "P1", "--json"), shell.err());
        String used = json().getFirst().getAsJsonArray("operations").get(0).getAsJsonObject().getAsJsonArray("alternatives")
                .get(0)
                .getAsJsonObject().getAsJsonArray("tools").get(0).getAsString();
        assertEquals(ExitCode.GOOD.number(), run("weigh", "GS-150", "--machine", "P1", "--forbid", used), shell.err());
        assertTrue(shell.out().contains("the pins and bans cost +"), shell.out());
        assertTrue(shell.out().contains("forbidden"), shell.out());
    }

    @Test
    void adviseTellsTheRankingAsTableAndJson() {
        assertEquals(ExitCode.GOOD.number(), run("advise", "--machine", "P1", "--top", "3", "--json"), shell.err());
        List<JsonObject> records = json();
        has(records.getFirst(), "record", "currency", "perYear", "additions", "workedOut", "choices", "orders", "findings");
        has(records.getFirst().getAsJsonArray("orders").get(0).getAsJsonObject(), "order", "machine", "perYear", "partsMade",
                "parts",
                "refusals");
        List<JsonObject> saving = records.stream().filter(r -> r.get("record").getAsString().equals("saving")).toList();
        assertFalse(saving.isEmpty(), "nothing saves on the gusset");
        double last = Double.MAX_VALUE;
        for (JsonObject r : saving) {
            assertTrue(r.keySet().containsAll(Set.of("record", "rank", "kind", "id", "name", "for", "price", "priceBasis",
                    "priceHow",
                    "savesPerYear", "pressHoursPerYear", "pressPerYear", "wearPerYear", "setUpsPerYear", "restPerYear",
                    "depreciationPerYear", "paybackYears", "mostPerYear", "parts", "makesPossible")), r.keySet().toString());
            assertTrue(r.get("savesPerYear").getAsDouble() <= last && r.get("savesPerYear").getAsDouble() > 0);
            assertTrue(r.get("mostPerYear").getAsDouble() >= r.get("savesPerYear").getAsDouble() - 1e-6);
            last = r.get("savesPerYear").getAsDouble();
        }
        assertTrue(shell.err().contains("ADVICE-SPAN"), shell.err());

        assertEquals(ExitCode.GOOD.number(), run("advise", "--machine", "P1", "--top", "3", "--per-year", "4"), shell.err());
        assertTrue(shell.out().contains(saving.getFirst().get("name").getAsString()), shell.out());
        assertTrue(shell.err().contains("ADVICE-PER-YEAR"), shell.err());
        assertTrue(shell.err().contains("ADVICE-NOT-COUNTED"), shell.err());
    }

    @Test
    void badInputIsNamedWithTheWayOut() {
        assertEquals(ExitCode.USAGE.number(), run("weigh"));
        assertEquals(ExitCode.INPUT.number(), run("weigh", "GS-999"));
        assertTrue(shell.err().contains("GS-999") && shell.err().contains("GS-150"), shell.err());
        assertEquals(ExitCode.INPUT.number(), run("weigh", "GS-150", "--machine", "P9"));
        assertTrue(shell.err().contains("P9") && shell.err().contains("P1"), shell.err());
        assertEquals(ExitCode.INPUT.number(), run("weigh", "GS-150", "--machine", "P1", "--pin", "T-999"));
        assertTrue(shell.err().contains("T-999") && shell.err().contains("T-001"), shell.err());
        assertEquals(ExitCode.USAGE.number(), run("weigh", "GS-150", "--machine", "P1", "--pin", "x=T-001"));
        assertEquals(ExitCode.USAGE.number(), run("weigh", "GS-150", "--machine", "P1", "--pin", "999=T-001"));
        assertEquals(ExitCode.INPUT.number(), run("advise", "--machine", "P9"));
        assertEquals(ExitCode.USAGE.number(), run("advise", "--top", "0"));
        assertTrue(shell.err().contains("--top"), shell.err());
        assertEquals(ExitCode.USAGE.number(), run("advise", "--per-year", "-3"));
        assertEquals(ExitCode.USAGE.number(), run("advise", "--price", "Round"));
        assertTrue(shell.err().contains("NAME=VALUE"), shell.err());
        assertEquals(ExitCode.USAGE.number(), run("advise", "GS-150"));
    }

    @Test
    void anOrderBookWithoutOrdersIsAnInputError() throws IOException {
        Files.delete(shop.resolve("orders/T-1.pworder"));
        assertEquals(ExitCode.INPUT.number(), run("advise"));
        assertTrue(shell.err().contains("ADVICE-NO-ORDERS"), shell.err());
    }
}
