// SPDX-License-Identifier: EPL-2.0
package punchwright.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

import punchwright.engine.press.Calculation;
import punchwright.engine.press.Input;
import punchwright.engine.press.Quantity;
import punchwright.planner.operations.ExitCode;

/** Single questions on the command line: values from the sources named, units, findings, exit codes, bad input. */
class CalcTest {

    private final Shell shell = new Shell();

    private int calc(String line) {
        return shell.run(("calc " + line).split(" "));
    }

    private JsonObject json(String line) {
        calc(line + " --json");
        assertEquals(1, shell.out().lines().count(), shell.out() + shell.err());
        return JsonParser.parseString(shell.out()).getAsJsonObject();
    }

    private double figure(String line, String key) {
        return json(line).getAsJsonObject("figures").getAsJsonObject(key).get("value").getAsDouble();
    }

    /** L t tau by hand: 314.16 x 2 x 370. */
    @Test
    void forceOfAStrengthAlone() {
        assertEquals(ExitCode.GOOD.number(), calc("force --length 314.16 --thickness 2 --strength 370"));
        assertTrue(shell.out().contains("232478 N") && shell.out().contains("F0 = Ls * t * tau"), shell.out());
        assertEquals("", shell.err());
        assertEquals(232_478.4, figure("force --length 314.16 --thickness 2 --strength 370", "force"), 0.1);
    }

    /**
     * Course notes on press-tool calculation: L 126, t 2, tau 400: 100 800 N; strip 20 %; Hellwig/Semlinger (from memory): 120.96
     * J.
     */
    @Test
    void thePressToolCourse() {
        String sheet = " --length 126mm --thickness 2 --strength 400MPa";
        assertEquals(100_800, figure("force" + sheet, "force"), 1e-6);
        assertEquals(20_160, figure("strip" + sheet + " --share 0.2", "strip"), 1e-6);
        assertEquals(120.96, figure("work" + sheet, "work"), 1e-9);
        assertEquals(604.8, figure("work" + sheet, "power"), 1e-9);
    }

    /** Oehler/Kaiser (from memory): t 2, tau 320: 2 x 0.1131; Groover (from memory): 2 x 0.06 x 2; per cent by custom 20 %. */
    @Test
    void clearanceSideBySide() {
        JsonObject figures = json("clearance --thickness 2 --strength 320").getAsJsonObject("figures");
        assertEquals(0.2263, figures.getAsJsonObject("clearance-root").get("value").getAsDouble(), 1e-4);
        assertEquals(0.24, figures.getAsJsonObject("clearance-allowance").get("value").getAsDouble(), 1e-9);
        assertEquals(0.4, figures.getAsJsonObject("clearance-custom").get("value").getAsDouble(), 1e-9);
        assertEquals("from-memory", figures.getAsJsonObject("clearance-root").get("standing").getAsString());
        assertEquals(0.12, figure("clearance --thickness 2 --strength 320 --rule allowance", "per-side"), 1e-9);
        assertEquals(ExitCode.GOOD.number(), calc("clearance --thickness 2 --strength 320 --on-hand 0.5"), "a note is good");
        assertTrue(shell.err().contains("PRESS-CLEARANCE-WIDE"), shell.err());
    }

    /**
     * Geometry by hand: r 10, h 0.1: pitch 2.821347, 100 hits in an opening of R 50. Kalpakjian/Oehler: t 2, tau 320, 1500:
     * 1.707.
     */
    @Test
    void nibbleSlitAndSmallestHole() {
        assertEquals(2.821347, figure("nibble --tool 20 --scallop 0.1", "pitch"), 1e-6);
        assertEquals(100, figure("nibble --tool 20 --scallop 0.1 --radius 50", "inside-hits"), 0);
        assertEquals(11, figure("slit --length 500 --tool 50 --overlap 2", "hits"), 0);
        assertEquals(1.707, figure("minimum-hole --thickness 2 --strength 320 --permitted 1500", "hole-by-stress"), 5e-4);
        assertEquals(2, figure("minimum-hole --thickness 2 --strength 320", "minimum-hole"), 1e-9);
    }

    /** SP 811: 1 in = 25.4 mm, 1 t = 9806.65 N. */
    @Test
    void units() {
        assertEquals(figure("force --length 25.4 --thickness 2.54 --strength 320", "force"),
                figure("force --length 1in --thickness 0.1in --strength 320N/mm2", "force"), 1e-6);
        JsonObject inputs = json("force --length 100 --thickness 2 --strength 320 --limit 12t").getAsJsonObject("inputs");
        assertEquals(117_679.8, inputs.getAsJsonObject("limit").get("value").getAsDouble(), 1e-6);
        assertEquals("N", inputs.getAsJsonObject("limit").get("unit").getAsString());
        assertTrue(inputs.getAsJsonObject("limit").get("given").getAsBoolean());
        assertFalse(inputs.getAsJsonObject("worn").get("given").getAsBoolean());
    }

    @Test
    void outsideARangeIsAFindingAndNoSilentNumber() {
        assertEquals(ExitCode.FINDINGS.number(), calc("force --length 100 --thickness 12 --strength 320"));
        assertTrue(shell.err().contains("PRESS-RANGE") && shell.err().contains("t 12 mm"), shell.err());
        assertTrue(shell.out().contains("384000 N"), shell.out());
        JsonObject finding = json("force --length 100 --thickness 12 --strength "
                + "320").getAsJsonArray("findings").get(0).getAsJsonObject();
        assertEquals("PRESS-RANGE", finding.get("code").getAsString());
        assertEquals("warning", finding.get("severity").getAsString());
        assertEquals(ExitCode.FINDINGS.number(), calc("force --length 100 --thickness 2 --strength 320 --limit 50kN"));
        assertTrue(shell.err().contains("PRESS-OVER-LIMIT"), shell.err());
    }

    @ParameterizedTest
    @ValueSource(strings = { "", "weather", "force strip", "force", "force --length 100 --thickness 2",
        "force --length 100 --thickness -2 --strength 320", "force --length 0 --thickness 2 --strength 320",
        "force --length 100 --thickness zwei --strength 320", "force --length 100 --thickness 2kN --strength 320",
        "force --length NaN --thickness 2 --strength 320", "force --length 1e400 --thickness 2 --strength 320",
        "force --length 100 --thickness 2 --strength 320 --scallop 1",
                "force --length 100 --thickness 2 --strength 320 --group cheese",
        "force --length 100 --thickness 2 --strength 320 --place 1", "clearance --thickness 2 --strength 320 --rule guess",
        "clearance --thickness 2 --strength 320 --machine P1", "nibble --tool 20 --scallop 11",
                "slit --length 100 --tool 5 --overlap 5",
        "countersink --head 5 --hole 6 --thickness 2 --tensile 400",
                "force --length 100 --thickness 2 --strength 320 --punches 1.5",
        "multi-tool --outer 40 --inserts 12 --wall 20", "force --length 100 --thickness 2 --strength" })
    void badInputIsNamedAndEndsWithUsage(String line) {
        assertEquals(ExitCode.USAGE.number(), calc(line.isEmpty() ? "--json" : line), line);
        assertEquals("", shell.out());
        assertTrue(shell.err().startsWith("error: ") && shell.err().lines().count() == 1, shell.err());
        assertFalse(shell.err().contains("Exception"), shell.err());
    }

    @ParameterizedTest
    @EnumSource(Calculation.class)
    void helpListsEveryInputWithUnitAndRange(Calculation question) {
        assertEquals(ExitCode.GOOD.number(), calc(question.word() + " --help"));
        for (Input i : question.inputs()) {
            String line = shell.out().lines().filter(l -> l.startsWith("    --" + i.name() + " ")).findFirst().orElse("");
            assertTrue(line.contains(" to ") && line.contains(i.quantity().sign()), question.word() + " " + i.name() + ": "
                    + line);
        }
    }

    /** Every question, in the middle of every range, answers on both forms with the same exit code and lists all inputs. */
    @ParameterizedTest
    @EnumSource(Calculation.class)
    void everyQuestionAnswers(Calculation question) {
        List<String> words = new ArrayList<>(List.of("calc", question.word()));
        for (Input i : question.inputs()) {
            if (i.required()) {
                words.add("--" + i.name());
                words.add(i.quantity() == Quantity.COUNT ? "4" : question == Calculation.COLLAR && i.name().equals("thread") ? "4"
                        : "" + Math.sqrt(Math.max(0.5, i.least()) * i.largest()));
            }
        }
        if (question == Calculation.COUNTERSINK) {
            words.set(words.indexOf("--hole") + 1, "4");
        }
        int code = shell.run(words.toArray(String[]::new));
        assertTrue(code == ExitCode.GOOD.number() || code == ExitCode.FINDINGS.number(), words + shell.err());
        words.add("--json");
        assertEquals(code, shell.run(words.toArray(String[]::new)));
        JsonObject record = JsonParser.parseString(shell.out()).getAsJsonObject();
        List<String> wrong = new ArrayList<>();
        ImportRecordSchemaTest.check("record", record, RecordSchema.of("calc").orElseThrow(), wrong);
        assertEquals(List.of(), wrong);
        assertEquals(question.word(), record.get("question").getAsString());
        assertEquals(question.inputs().stream().map(Input::name).toList(),
                List.copyOf(record.getAsJsonObject("inputs").keySet()));
        assertFalse(record.getAsJsonObject("figures").isEmpty());
        for (JsonElement f : record.getAsJsonObject("figures").asMap().values()) {
            assertTrue(f.getAsJsonObject().has("formula") && f.getAsJsonObject().has("source")
                    && f.getAsJsonObject().has("standing"));
        }
    }

    @Test
    void materialAndPlaceComeFromTheWorkspace(@TempDir Path shop) throws IOException {
        DemoCopy.to(shop);
        String where = "--workspace " + shop + " ";
        assertEquals(ExitCode.INPUT.number(), shell.run((where
                + "calc force --length 100 --thickness 2 --material none").split(" ")));
        assertTrue(shell.err().contains("There is no material 'none'") && shell.err().contains("It has:"), shell.err());
        String known = shell.err().replaceAll("(?s).*It has: ([^,.]+).*", "$1");
        assertEquals(ExitCode.GOOD.number(), shell.run((where + "calc force --length 100 --thickness 2 --material " + known
                + " --machine P1 --place P1-3 --json").split(" ")), shell.err());
        JsonObject record = JsonParser.parseString(shell.out()).getAsJsonObject();
        assertEquals(known, record.get("material").getAsString());
        assertEquals(210_000, record.getAsJsonObject("inputs").getAsJsonObject("limit").get("value").getAsDouble(), 1e-6,
                "press 1 of the demo takes 210 kN");
        assertTrue(record.getAsJsonObject("figures").has("of-limit"));
        assertEquals(ExitCode.INPUT.number(), shell.run((where + "calc force --length 100 --thickness 2 --material " + known
                + " --machine P1 --place 99").split(" ")));
        assertEquals(ExitCode.USAGE.number(), shell.run((where + "calc force --length 100 --thickness 2 --material " + known
                + " --group brass").split(" ")));
    }
}
