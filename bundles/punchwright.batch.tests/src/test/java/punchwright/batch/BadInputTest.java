// SPDX-License-Identifier: EPL-2.0
package punchwright.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import punchwright.planner.operations.ExitCode;

/**
 * Bad input to the main job: each gives one clear message with file, place and remedy, a non-zero exit code, and leaves every
 * other file as it was. The shop is a copy of the demo shop with one small order.
 */
class BadInputTest {

    @TempDir
    private Path shop;

    private final Shell shell = new Shell();

    @BeforeEach
    void copyTheDemoShop() throws IOException {
        DemoCopy.to(shop);
        SmallOrder.write(shop, 4, "");
    }

    private int plan() {
        return shell.run("--workspace", shop.toString(), "--quiet", "plan", "T-1", "--machine", "P1");
    }

    /** Ways in which a drawing can be bad, with what the message must say. */
    enum BadDrawing {
        MISSING("gusset-150.dxf"), EMPTY("empty"), TRUNCATED("gusset-150.dxf"), BINARY_NOISE("DXF"), ANOTHER_FORMAT("DXF"),
        NO_CONTOUR("contour");

        private final String mustSay;

        BadDrawing(String mustSay) {
            this.mustSay = mustSay;
        }

        void spoil(Path drawing) throws IOException {
            String text = Files.readString(drawing);
            switch (this) {
                case MISSING -> Files.delete(drawing);
                case EMPTY -> Files.write(drawing, new byte[0]);
                case TRUNCATED -> Files.writeString(drawing, text.substring(0, text.indexOf("ENTITIES") + 60));
                case BINARY_NOISE -> Files.write(drawing, noise());
                case ANOTHER_FORMAT -> Files.writeString(drawing, "%PDF-1.7\n1 0 obj\n<< >>\nendobj\n");
                case NO_CONTOUR -> Files.writeString(drawing, "  0\nSECTION\n  2\nENTITIES\n  0\nENDSEC\n  0\nEOF\n");
            }
        }

        private static byte[] noise() {
            byte[] bytes = new byte[5000];
            new Random(7).nextBytes(bytes);
            return bytes;
        }
    }

    @ParameterizedTest
    @EnumSource(BadDrawing.class)
    void aBadDrawingIsNamedWithARemedyAndNothingIsDamaged(BadDrawing bad) throws IOException {
        bad.spoil(shop.resolve("drawings/gusset-150.dxf"));
        Map<Path, String> before = contents();

        int code = plan();

        assertEquals(ExitCode.INPUT.number(), code, shell.err());
        assertTrue(shell.err().contains("gusset-150.dxf"), shell.err());
        assertTrue(shell.err().contains(bad.mustSay), shell.err());
        assertEquals(1, shell.err().lines().filter(l -> l.startsWith("error")).count(), shell.err());
        assertFalse(shell.err().contains("\tat "), shell.err());
        assertEquals(before, contents());
    }

    @Test
    void anUnknownMaterialIsNamedWithThePart() throws IOException {
        replace("parts/gusset-150.pwpart", "#mat-s235", "#mat-unobtainium");

        assertEquals(ExitCode.INPUT.number(), plan(), shell.err());
        assertTrue(shell.err().contains("GS-150") && shell.err().contains("material"), shell.err());
        assertFalse(Files.exists(shop.resolve("plans")), "no plan is kept");
    }

    @Test
    void aPartThatNoMachineCanMakeSaysWhyOnEachMachine() throws IOException {
        replace("parts/gusset-150.pwpart", "thicknessMm=\"3.0\"", "thicknessMm=\"14.0\"");

        int code = shell.run("--workspace", shop.toString(), "--quiet", "plan", "T-1");

        assertEquals(ExitCode.FINDINGS.number(), code, shell.err());
        for (String machine : new String[] { "Press 1", "Press 2", "Press 3" }) {
            assertTrue(shell.err().contains(machine), machine + " is not named in: " + shell.err());
        }
        assertTrue(shell.err().contains("14 mm"), shell.err());
    }

    @Test
    void aRefusalByTheStockNamesTheSheetThatIsMissing() throws IOException {
        replace("parts/gusset-150.pwpart", "thicknessMm=\"3.0\"", "thicknessMm=\"2.5\"");

        int code = shell.run("--workspace", shop.toString(), "--quiet", "plan", "T-1", "--machine", "P3");

        assertEquals(ExitCode.FINDINGS.number(), code, shell.err());
        assertTrue(shell.out().contains("S235JR 2.50 mm"), shell.out());
    }

    @Test
    void aLibraryOfANewerFormatIsRefusedAndLeftAlone() throws IOException {
        replace("library.pwlib", "<?punchwright format=\"1\"?>", "<?punchwright format=\"99\"?>");
        Map<Path, String> before = contents();

        assertEquals(ExitCode.INPUT.number(), plan());
        assertTrue(shell.err().contains("library.pwlib") && shell.err().contains("99"), shell.err());
        assertEquals(before, contents());
    }

    @Test
    void aDamagedLibraryIsRefusedAndLeftAlone() throws IOException {
        String text = Files.readString(shop.resolve("library.pwlib"));
        Files.writeString(shop.resolve("library.pwlib"), text.substring(0, text.length() / 2));
        Map<Path, String> before = contents();

        assertEquals(ExitCode.INPUT.number(), plan());
        assertTrue(shell.err().contains("library.pwlib"), shell.err());
        assertEquals(before, contents());
    }

    @Test
    void anUnknownOrderAndMachineAreNamedWithThoseThatThereAre() {
        assertEquals(ExitCode.INPUT.number(), shell.run("--workspace", shop.toString(), "plan", "T-99"));
        assertTrue(shell.err().contains("T-99") && shell.err().contains("A-2641"), shell.err());
        assertEquals(ExitCode.INPUT.number(), shell.run("--workspace", shop.toString(), "plan", "T-1", "--machine", "P9"));
        assertTrue(shell.err().contains("P9") && shell.err().contains("P1"), shell.err());
    }

    @Test
    void theGoodOrderIsPlannedProvenKeptAndExported() throws IOException {
        assertEquals(ExitCode.GOOD.number(), plan(), shell.err());
        assertTrue(shell.out().contains("proven"), shell.out());
        Path kept = shop.resolve("plans/plan-T-1-P1.pwplan");
        assertTrue(Files.size(kept) > 1000);
        Map<Path, String> before = contents();
        assertEquals(ExitCode.GOOD.number(), shell.run("--workspace", shop.toString(), "export", "T-1"), shell.err());
        assertTrue(Files.exists(shop.resolve("out/sheet-P1.txt")) && Files.exists(shop.resolve("out/cost-T-1.txt")));
        before.forEach((file, text) -> assertEquals(text, contents().get(file), file.toString()));
        assertNotEquals(0, before.size());
    }

    @Test
    void aPlaceWhereNothingCanBeWrittenIsNamed() throws IOException {
        assertEquals(ExitCode.GOOD.number(), plan(), shell.err());
        Path inTheWay = Files.writeString(shop.resolve("out"), "a file where a folder should be");

        assertEquals(ExitCode.INPUT.number(), shell.run("--workspace", shop.toString(), "export", "T-1"));
        assertTrue(shell.err().contains(inTheWay.toString()), shell.err());
        assertEquals("a file where a folder should be", Files.readString(inTheWay));
    }

    private void replace(String file, String from, String to) throws IOException {
        String text = Files.readString(shop.resolve(file));
        assertTrue(text.contains(from), from + " is not in " + file);
        Files.writeString(shop.resolve(file), text.replace(from, to));
    }

    /** Every file of the shop with its content, but the lock. */
    private Map<Path, String> contents() {
        Map<Path, String> all = new TreeMap<>();
        try (Stream<Path> files = Files.walk(shop)) {
            for (Path f : files.filter(Files::isRegularFile).filter(f -> !f.endsWith(".lock")).toList()) {
                all.put(shop.relativize(f), Files.readString(f, StandardCharsets.ISO_8859_1));
            }
            return all;
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
