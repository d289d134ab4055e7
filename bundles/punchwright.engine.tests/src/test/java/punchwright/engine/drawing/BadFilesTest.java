// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import punchwright.engine.drawing.dxf.DxfReason;
import punchwright.engine.finding.Reason;

class BadFilesTest {

    private static Reason reason(String text) {
        return assertThrows(DrawingException.class, () -> Dxf.read(text)).finding().reason();
    }

    @Test
    void aMissingFileAFolderAndAnEmptyFile(@TempDir Path folder) throws IOException {
        Path empty = Files.createFile(folder.resolve("empty.dxf"));
        for (Object[] row : new Object[][] {{folder.resolve("none.dxf"), DrawingReason.FILE_MISSING},
                {folder, DrawingReason.FILE_IS_FOLDER},
            {empty, DxfReason.EMPTY}}) {
            DrawingException e = assertThrows(DrawingException.class,
                    () -> DrawingReader.read((Path) row[0], DrawingOptions.USUAL));
            assertEquals(row[1], e.finding().reason());
            assertTrue(e.getMessage().startsWith(row[0].toString()));
            assertFalse(e.finding().remedy().isEmpty());
        }
    }

    @Test
    void whatIsNoDrawingIsRefused() {
        assertEquals(DxfReason.NOT_DXF, reason("\u0089PNG\r\n\u001a\nxxxx"));
        assertEquals(DxfReason.NOT_DXF, reason("Dear Sir,\nplease find enclosed\n"));
        assertEquals(DxfReason.NOT_DXF, reason("0\nLINE\n"));
        assertEquals(DrawingReason.NO_CONTOUR, reason(Dxf.mm() + Dxf.entities("")));
        assertEquals(DrawingReason.NO_CONTOUR_OPEN, reason(Dxf.mm() + Dxf.entities(Dxf.line(0, 0, 5, 5))));
        assertEquals(DrawingReason.NO_CONTOUR_BAD_NUMBERS,
                reason(Dxf.mm() + Dxf.entities(Dxf.tags("0 CIRCLE|10 0,5|20 0|40 3"))));
    }

    @Test
    void aFileThatEndsEarlyKeepsWhatIsWhole() throws DrawingException {
        String whole = Dxf.mm() + Dxf.entities(Dxf.PLATE + Dxf.circle(50, 50, 10));
        String cut = whole.substring(0, whole.indexOf("CIRCLE") + 12);
        DrawingResult r = Dxf.read(cut);
        assertEquals(1, r.loops().size());
        assertTrue(r.findings().stream().anyMatch(f -> f.reason() == DxfReason.ENDS_EARLY && f.message().contains("CIRCLE")));
    }

    @Test
    void badNumbersAreNamedWithLineAndText() throws DrawingException {
        DrawingResult r = Dxf.read(Dxf.mm()
                + Dxf.entities(Dxf.PLATE + Dxf.tags("0 CIRCLE|10 NaN|20 0|40 3|0 CIRCLE|10 1e999|20 0|40 3")));
        assertEquals(2, r.findings().stream().filter(f -> f.reason() == DxfReason.BAD_NUMBER).count());
        assertTrue(r.findings().get(0).message().contains("\"NaN\""));
    }

    @Test
    void numbersInAnySpelling() throws DrawingException {
        DrawingResult r = Dxf.read(Dxf.mm() + Dxf.entities("  0\nCIRCLE\n 10\n +2.0E+02\n 20\n1.E2 \n 40\n   .5e1\n"));
        assertEquals(10, r.circleDiametersMm().get(0), 1e-12);
        assertEquals(200, r.loops().get(0).bounds().center().x(), 1e-9);
    }

    @Test
    void aStreamThatFailsIsAFinding() {
        InputStream failing = new InputStream() {
            @Override
            public int read() throws IOException {
                throw new IOException("device gone");
            }
        };
        DrawingException e = assertThrows(DrawingException.class,
                () -> DrawingReader.read(failing, "x.dxf", DrawingOptions.USUAL));
        assertEquals(DrawingReason.FILE_UNREADABLE, e.finding().reason());
        assertTrue(e.getMessage().contains("device gone"));
    }

    /** Whatever the bytes, there is a result or a finding, never another exception. */
    @Test
    void damagedFilesNeverBreakTheReader() {
        byte[] good = (Dxf.mm() + Dxf.blocks(Dxf.block("H", Dxf.circle(0, 0, 2)))
                + Dxf.entities(Dxf.PLATE
                + Dxf.tags("0 INSERT|2 H|10 9|20 9|70 3|44 9|0 SPLINE|70 8|71 2|73 3|40 0|40 0|40 0|40 1|40 1|40 1"
                + "|10 0|20 0|10 20|20 20|10 40|20 0|0 ELLIPSE|10 50|20 40|11 30|21 0|40 0.5"
                + "|0 LWPOLYLINE|90 4|70 1|10 0|20 0|10 30|20 0|42 1"
                + "|10 30|20 8|0 ARC|10 1|20 2|40 3|50 10|51 80"))).getBytes(StandardCharsets.US_ASCII);
        Random random = new Random(99);
        int read = 0;
        for (int i = 0; i < 4000; i++) {
            byte[] bad = good.clone();
            for (int k = random.nextInt(6); k >= 0; k--) {
                bad[random.nextInt(bad.length)] = (byte) (random.nextInt(3) == 0 ? random.nextInt(256) : "0123456789.-eE\n "
                        .charAt(random.nextInt(16)));
            }
            int length = random.nextInt(4) == 0 ? random.nextInt(bad.length) : bad.length;
            try {
                DrawingReader.survey(new ByteArrayInputStream(bad, 0, length), "damaged.dxf", DrawingOptions.EVERYTHING);
                read++;
            } catch (DrawingException told) {
                assertFalse(told.finding().message().isEmpty());
            }
        }
        assertTrue(read > 2000);
    }
}
