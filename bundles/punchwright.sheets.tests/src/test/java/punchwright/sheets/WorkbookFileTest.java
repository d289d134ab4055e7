// SPDX-License-Identifier: EPL-2.0
package punchwright.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import punchwright.sheets.book.Texts;
import punchwright.sheets.book.WorkbookFile;

/** A workbook is written whole or not at all, and what stood there before is never harmed. */
class WorkbookFileTest {

    @TempDir
    Path folder;

    private static byte[] zip() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream out = new ZipOutputStream(bytes)) {
            out.putNextEntry(new ZipEntry("a.xml"));
            out.write("<a/>".getBytes());
            out.closeEntry();
        }
        return bytes.toByteArray();
    }

    @Test
    void aFullDiskHarmsNothingAndSaysTheWayOut() throws Exception {
        Path file = folder.resolve("x.xlsx");
        Files.writeString(file, "old");
        WorkbookFile full = new WorkbookFile(new Texts(Locale.ENGLISH)) {
            @Override
            protected void force(Path target, byte[] content) throws IOException {
                Files.writeString(target, "half");
                throw new FileSystemException(target.toString(), null, "No space left on device");
            }
        };
        SheetException e = assertThrows(SheetException.class, () -> full.write(file, zip()));
        assertTrue(e.getMessage().contains("x.xlsx") && e.getMessage().contains("disk is full") && e.getMessage()
                .contains("Make room"),
                e.getMessage());
        assertEquals("old", Files.readString(file));
        assertEquals(List.of("x.xlsx"), names());
    }

    @Test
    void aReadOnlyFolderHarmsNothingAndSaysTheWayOut() throws Exception {
        Path locked = Files.createDirectory(folder.resolve("locked"));
        assumeTrue(locked.toFile().setWritable(false) && !Files.isWritable(locked), "skipped: this user may write everywhere");
        SheetException e = assertThrows(SheetException.class,
                () -> new WorkbookFile(new Texts(Locale.ENGLISH)).write(locked.resolve("x.xlsx"), zip()));
        assertTrue(e.getMessage().contains("cannot be written"), e.getMessage());
        locked.toFile().setWritable(true);
    }

    @Test
    void aFileInPlaceOfTheFolderIsReported() throws Exception {
        Path plain = folder.resolve("plain");
        Files.writeString(plain, "not a folder");
        SheetException e = assertThrows(SheetException.class,
                () -> new WorkbookFile(new Texts(Locale.GERMAN)).write(plain.resolve("x.xlsx"), zip()));
        assertTrue(e.getMessage().contains("Arbeitsmappe"), e.getMessage());
        assertEquals("not a folder", Files.readString(plain));
    }

    @Test
    void writesIntoANewFolderAndLeavesNothingBeside() throws Exception {
        new WorkbookFile(new Texts(Locale.ENGLISH)).write(folder.resolve("new/x.xlsx"), zip());
        assertTrue(Files.size(folder.resolve("new/x.xlsx")) > 0);
        try (Stream<Path> files = Files.list(folder.resolve("new"))) {
            assertEquals(1, files.count());
        }
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(p -> p.getFileName().toString()).toList();
        }
    }
}
